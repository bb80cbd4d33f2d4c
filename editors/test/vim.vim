" vim -es -u NONE -N -S editors/test/vim.vim      (from the top of the repository; Neovim too: nvim --headless -u NONE -S ...)
" Writes what is wrong to $RECIPE_TEST_RESULT; an empty file says that all is well.
set nomore runtimepath^=editors/vim
filetype plugin indent on
syntax on
let s:wrong = []

function! s:Name(line, piece) abort
  return synIDattr(synID(a:line, stridx(getline(a:line), a:piece) + 1, 1), 'name')
endfunction

function! s:Expect(text, piece, name) abort
  let line = search('\V' .. escape(a:text, '\'), 'nw')
  let found = line == 0 ? 'no such line' : s:Name(line, a:piece)
  if found !=# a:name
    call add(s:wrong, a:text .. ': ' .. a:piece .. ' is ' .. found .. ', not ' .. a:name)
  endif
endfunction

edit samples/hatch-lid.recipe
if &filetype !=# 'recipe' | call add(s:wrong, 'filetype ' .. &filetype) | endif
if &commentstring !=# '# %s' | call add(s:wrong, 'commentstring ' .. &commentstring) | endif
call s:Expect('language 1', 'language', 'recipeDirective')
call s:Expect('# A round', 'round', 'recipeComment')
call s:Expect('use "shop', 'shop', 'recipeText')
call s:Expect('let lap', 'let', 'recipeLet')
call s:Expect('let lap', 'lap', 'recipeNew')
call s:Expect('mould hatch-lid-mould', 'mould', 'recipeDeclaration')
call s:Expect('mould hatch-lid-mould', 'hatch-lid-mould', 'recipeNew')
" A word that may open a block (surface revolved { ... }) is coloured as one that does.
call s:Expect('surface     spherical-cap', 'surface', 'recipeBlock')
call s:Expect('surface     spherical-cap', 'spherical-cap', 'recipeValue')
call s:Expect('surface     spherical-cap', 'diameter', 'recipeClause')
call s:Expect('surface     spherical-cap', '300', 'recipeNumber')
call s:Expect('surface     spherical-cap', 'mm', 'recipeUnit')
call s:Expect('process   bagged', 'process', 'recipeLine')
call s:Expect('plies {', 'plies', 'recipeBlock')

" Laid out as it is, nothing moves; without its indentation it comes back.
let s:before = getline(1, '$')
normal! gg=G
if getline(1, '$') !=# s:before | call add(s:wrong, 'indentation moved lines') | endif
silent %s/^\s\+//
normal! gg=G
if getline(1, '$') !=# s:before | call add(s:wrong, 'indentation did not come back') | endif

" Lines that are no sample.
enew!
set filetype=recipe
call setline(1, ['part a {', '  note "open', '  room 20 degC', '  plies { body carbon-8 +/-45 x2 }', '  source-1 2026-05-14', '  trim 80 grit', '  trim 1,5 mm', '}'])
syntax sync fromstart
call s:Expect('note "open', 'open', 'recipeText')
call s:Expect('room 20', 'room', 'recipeLine')
call s:Expect('room 20', 'degC', 'recipeUnit')
call s:Expect('plies {', 'body', 'recipeHead')
call s:Expect('plies {', 'carbon-8', 'recipeName')
call s:Expect('plies {', '+/-', 'recipeSign')
call s:Expect('plies {', 'x2', 'recipeCount')
call s:Expect('source-1', 'source-1', 'recipeHead')
call s:Expect('source-1', '2026', 'recipeDate')
call s:Expect('trim 80', 'grit', 'recipeName')
call s:Expect('trim 1,5', '1,5', 'recipeWrong')

call writefile(s:wrong, $RECIPE_TEST_RESULT)
qall!
