" Holds what the screen shows against what it should; ends Vim with code 1 where
" something is not seen.
syntax on
set nomore shortmess+=F

function Screen()
  redraw!
  return join(map(range(1, &lines), {_, row -> join(map(range(1, &columns), {_, column -> screenstring(row, column)}), '')}), "\n")
endfunction

function Colour(line, words)
  return synIDattr(synIDtrans(synID(a:line, stridx(getline(a:line), a:words) + 1, 1)), 'name')
endfunction

let s:seen = []
let s:missed = 0
function Must(what, holds)
  call add(s:seen, (a:holds ? 'seen: ' : 'NOT SEEN: ') .. a:what)
  let s:missed += !a:holds
endfunction

call Must('the file is a pattern', &filetype ==# 'crochet')
call Must('colours', [Colour(35, 'Rnd 5'), Colour(35, 'Sc in'), Colour(35, '3 sts'), Colour(35, '(16 sts)'), Colour(43, 'Fasten off')]
      \ ==# ['PreProc', 'Identifier', 'Constant', 'Special', 'Statement'])

silent make!
copen
call Must('the finding in the list', Screen() =~# 'acorn.crochet|35 col 53 error| makes 15 sts, says 16')
call Must('nothing else in the list', len(getqflist()) == 1 && getqflist()[0].type ==# 'e')
cfirst
call Must('the cursor at the finding', [line('.'), col('.')] == [35, 53])

silent substitute/(16 sts)/(15 sts)/
silent write
silent make!
call Must('no finding once the count is right', empty(getqflist()))

edit! $PATTERN
silent %substitute/^Rnd 14.*\n//
silent write
silent make!
call Must('warnings as such', index(map(getqflist(), 'v:val.type'), 'w') >= 0)

call writefile(s:seen + (s:missed ? [Screen()] : []), $TMPDIR .. '/seen')
if s:missed
  cquit
endif
qall!
