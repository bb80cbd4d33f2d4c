if exists('b:did_indent')
  finish
endif
let b:did_indent = 1

setlocal indentexpr=RecipeIndent() indentkeys=0{,0},0),!^F,o,O nolisp
let b:undo_indent = 'setlocal indentexpr< indentkeys< lisp<'

if exists('*RecipeIndent')
  finish
endif

" Two blanks for each brace or parenthesis that is open; one that closes at the start of a line counts there already.
function! RecipeIndent() abort
  let above = prevnonblank(v:lnum - 1)
  if above == 0
    return 0
  endif
  let line = s:Code(getline(above))
  let open = count(line, '{') + count(line, '(') - count(substitute(line, '^\s*[})]', '', ''), '}') - count(substitute(line, '^\s*[})]', '', ''), ')')
  let closes = getline(v:lnum) =~# '^\s*[})]' ? 1 : 0
  return max([0, indent(above) + (open > 0 ? 1 : open < 0 ? -1 : 0) * shiftwidth() - closes * shiftwidth()])
endfunction

" A line without its texts and its comment.
function! s:Code(line) abort
  return substitute(substitute(a:line, '"\%([^"\\]\|\\.\)*"\?', '', 'g'), '#.*', '', '')
endfunction
