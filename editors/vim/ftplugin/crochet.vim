" A crochet pattern: `gc` and friends know its comments, :make checks it.
if exists('b:did_ftplugin')
  finish
endif
let b:did_ftplugin = 1

setlocal comments=:// commentstring=//\ %s
compiler stitchproof
let b:undo_ftplugin = 'setlocal comments< commentstring< makeprg< errorformat<'
