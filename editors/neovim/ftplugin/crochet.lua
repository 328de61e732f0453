require('stitchproof').start()
