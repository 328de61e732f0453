; This file is written from vscode/syntaxes/crochet.tmLanguage.json by go test ./editors -update.

(comment) @comment
(heading) @type
(label) @function
(field) @property
(count) @constant
(stitch) @function.builtin
(action) @keyword
(bracket) @operator
(number) @number
