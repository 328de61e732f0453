" :make lists what is wrong in the pattern; :cnext goes from finding to finding.
if exists('current_compiler')
  finish
endif
let current_compiler = 'stitchproof'

CompilerSet makeprg=stitchproof\ check\ --quiet\ --format\ lines\ %:S
" A caution (someone could be hurt) is listed as an error, with its own word before it.
CompilerSet errorformat=%f:%l:%c:\ %trror:\ %m,%f:%l:%c:\ %tarning:\ %m,%f:%l:%c:\ %tnfo:\ %m,%E%f:%l:%c:\ caution:\ %m
