" The lists of words are written by tests/Recipe.Semantics.Tests (RECIPE_UPDATE_GOLDENS=1); the rest is written by hand.
if exists('b:current_syntax')
  finish
endif
let s:keep = &cpoptions
set cpoptions&vim

syntax case match
syntax iskeyword @,48-57,_,-,192-255

" A word that is none of the language is a name.
syntax match recipeName /[[:alpha:]_]\k*/ contains=recipeClause,recipeValue,recipeTimes,recipeTo
syntax match recipeCount /\<x\d\+\>/
syntax keyword recipeTimes contained x
syntax match recipeTimes /×/
syntax keyword recipeTo contained to
syntax match recipeSign /[-+*/:=]\|+\/-\|±/
syntax match recipeBracket /[{}()]/
syntax match recipeEnd /;/
syntax match recipeNumber /\d\+\%(\.\d\+\)\?\%([eE][+-]\?\d\+\)\?/ nextgroup=recipeUnit skipwhite
syntax match recipeBracket /)/ nextgroup=recipeUnit skipwhite
syntax match recipeDate /\d\{4}-\d\{2}-\d\{2}\k\@!/
syntax match recipeWrong /\d*,\d[0-9.,]*/ nextgroup=recipeUnit skipwhite

" The word that begins a line, at the top and in a block, and the name that a declaration gives.
syntax match recipeHead /\%(^\|[{};]\)\@1<=\s*\zs[[:alpha:]_]\k*/ contains=recipeBlock,recipeLine
syntax match recipeTop /^\s\@!\%uFEFF\?\zs[[:alpha:]_]\k*/ contains=recipeDeclaration,recipeDirective,recipeLet nextgroup=recipeNew skipwhite
syntax match recipeNew contained /[[:alpha:]_]\k*/
syntax keyword recipeLet contained let

syntax region recipeText start=/"/ skip=/\\["\\]/ end=/"/ end=/$/ oneline contains=recipeEscape
syntax match recipeEscape contained /\\["\\]/
syntax match recipeComment /#.*$/ contains=@Spell

let s:words = []
" words: declarations
let s:words += split('mould-material release-agent release-film sealant-tape surface-coat flow-medium')
let s:words += split('flash-tape catch-pot adhesive bag-film breather gel-coat peel-ply bleeder explore pattern')
let s:words += split('variant fabric insert build fibre mould resin caul core hose part port rule shop veil mat')
let s:words += split('ud')
" end of words
execute 'syntax keyword recipeDeclaration contained' join(s:words)

let s:words = []
" words: directives
let s:words += split('findings language accept prices stock use')
" end of words
execute 'syntax keyword recipeDirective contained' join(s:words)

let s:words = []
" words: blocks
let s:words += split('hardener kinetics planned prepreg release surface wet-out either figure finish infuse')
let s:words += split('safety vacuum count every least plies cure good join most must when any bad bag mix not')
let s:words += split('sum no')
" end of words
execute 'syntax keyword recipeBlock contained' join(s:words)

let s:words = []
" words: lines
let s:words += split('glass-transition-limit compressive-strength transverse-expansion minimum-temperature')
let s:words += split('pulls-since-release transverse-modulus mould-temperature resin-temperature')
let s:words += split('glass-transition heat-of-reaction heat-stabilised pre-accelerated inner-diameter')
let s:words += split('self-releasing store-humidity fibre-content gauge-checked locking-angle resin-content')
let s:words += split('shear-modulus stays-in-part thermocouples areal-weight fibre-angles permeability')
let s:words += split('release-film resin-pickup resin-uptake sealant-tape strain-limit check-valve disposition')
let s:words += split('flow-medium largest-pot perforation roll-length silent-when ventilation acceptable')
let s:words += split('clamp-feed cures-with feed-lines heat-limit laminators leak-check post-cured reinforced')
let s:words += split('respirator seal-coats second-cup shelf-life stick-test warp-share bond-line catch-pot')
let s:words += split('chemistry deviation drop-test expansion feed-line film-life full-cure post-cure shrinkage')
let s:words += split('tape-land thickness untrimmed viscosity adhesive altitude bag-film breather capacity')
let s:words += split('coverage currency envelope flexible gel-time humidity leftover moisture out-life out-time')
let s:words += split('outdoors peel-ply peroxide pinholes pot-life pull-aid quantity revision severity silicone')
let s:words += split('solvents undercut bleeder changed coating default demould density freezer inspect made-by')
let s:words += split('made-of made-on mandrel message modulus overlap poisson prepare process replace reserve')
let s:words += split('section service stagger support abrade accept action binder choose closes coated colour')
let s:words += split('debulk defect family filler fillet flange gloves halves hazard helper insert length')
let s:words += split('manner mixing pickup pleats porous radius reason region remedy remove sample scrape')
let s:words += split('settle signed sizing source spills target tested volume within align bleed cause cloth')
let s:words += split('coats debag degas draft drape drill edges fibre gauge lasts limit mixed mould night other')
let s:words += split('paint paper parts point price prime pulls resin scale scarf sheet spare start state store')
let s:words += split('stuff title tools units waxed weave weigh where width axis bond caul cell coat cool draw')
let s:words += split('dust fill film hold hose keep kind left load loss mass note oven pace path peel port pots')
let s:words += split('pull pump ramp rise room seal seam ship step stir tape thaw time tray trim used vent wait')
let s:words += split('want wash add cup cut dry fix kit off pot use by')
" end of words
execute 'syntax keyword recipeLine contained' join(s:words)

let s:words = []
" words: values
let s:words += split('cured-then-bonded cured-then-taped with-accelerator bending-across half-ellipsoid')
let s:words += split('modulus-across semi-permanent stretch-across bending-along modulus-along spherical-cap')
let s:words += split('press-across accelerator liquid-film orientation clock-left paraboloid softens-at')
let s:words += split('structural times-over vinylester wet-in-wet anhydride breathing extracted pin-prick')
let s:words += split('polyester to-vacuum breather cosmetic cure-end cylinder emulsion enclosed material')
let s:words += split('outdoors peroxide phenolic released repaired revolved seasoned stitched between by-heat')
let s:words += split('demould grooved indoors infused mineral minus-x minus-y minus-z pigment prepreg repeats')
let s:words += split('sawdust solvent stretch warning advice bagged filler flange flying insert letter medium')
let s:words += split('metric powder random repair above amine apart clean cured debag epoxy error front group')
let s:words += split('least light patch plain press scrap shear sheet swept water waxed white write area back')
let s:words += split('bare both cone core cost dark disc down even feed fill flat foam hand heat mesh most none')
let s:words += split('open part pots rags room slit tray vent warm add any bin box new use wax wet a4 cm ft mm')
let s:words += split('up us m x y z')
" end of words
execute 'syntax keyword recipeValue contained yes no' join(s:words)

let s:words = []
" words: clauses
let s:words += split('resin-content join-lines laminators perforated thickness unwrapped absolute at-least')
let s:words += split('diameter hardener isolated mixed-at received ultimate ambient assumed at-most because')
let s:words += split('carries chamfer counted cut-out dead-at exhaust expires hottest laid-on overlap reached')
let s:words += split('smaller support across beyond covers height lasted length offcut opened pieces radius')
let s:words += split('reused sealed source vacuum volume weight within after along below coats darts depth')
let s:words += split('every holds limit parts resin solid steps strip under until width at-x at-y at-z band')
let s:words += split('edge face from like mass over pull rise sits size span step then trim unit wait with arc')
let s:words += split('dry for gap lot off at by in no of on to')
" end of words
execute 'syntax keyword recipeClause contained' join(s:words)

let s:words = []
" words: units
let s:words += split('millimeter millimetre degC-diff degF-diff microns minutes newtons percent seconds denier')
let s:words += split('inches liters litres meters metres micron minute months newton second grams hours liter')
let s:words += split('litre meter metre month weeks yards years Torr days degC degF dtex feet floz foot gram')
let s:words += split('hour inHg inch mbar mmHg sqft sqin sqyd thou torr week yard year AUD BRL CAD CHF CNY CZK')
let s:words += split('DKK EUR GBP GPa HKD HUF IDR ILS INR ISK JPY KRW MPa MXN MYR Msi NOK NZD PHP PLN RON RSD')
let s:words += split('SEK SGD THB TRY TWD UAH USD VND ZAR atm bar cfm cm2 cm3 cm² cm³ day deg dm2 dm² ft2 ft3')
let s:words += split('ft² ft³ gal gsm hPa in2 in3 in² in³ kPa ksi lbf lbs mPa mil min mm2 mm3 mm² mm³ ppm psi')
let s:words += split('sec sqm tex yd2 yd² Pa cP cc cm ft hr in kJ kN kW kg km lb m2 m3 mL mg ml mm m² m³ oz qt')
let s:words += split('um yd °C °F µm ºC ºF ˚C ˚F μm % J K L N W d g h l m s ° º ˚ ℃ ℉')
" end of words
let s:unit = '\%(' .. join(s:words, '\|') .. '\)'
execute 'syntax match recipeUnit contained /' .. s:unit .. '\%([/.·]' .. s:unit .. '\)*\%(%\@1<=\|\%([[:alnum:]_]\|-[[:alpha:]_]\)\@!\)/'
unlet s:words s:unit

" Blocks may be folded: set foldmethod=syntax.
syntax region recipeFold matchgroup=recipeBracket start=/{/ end=/}/ transparent fold

syntax sync minlines=200

highlight default link recipeName Identifier
highlight default link recipeNew Type
highlight default link recipeTop Normal
highlight default link recipeHead Identifier
highlight default link recipeDeclaration Keyword
highlight default link recipeDirective PreProc
highlight default link recipeLet Keyword
highlight default link recipeBlock Statement
highlight default link recipeLine Label
highlight default link recipeClause Special
highlight default link recipeValue Constant
highlight default link recipeNumber Number
highlight default link recipeCount Number
highlight default link recipeDate Constant
highlight default link recipeUnit StorageClass
highlight default link recipeSign Operator
highlight default link recipeTimes Operator
highlight default link recipeTo Operator
highlight default link recipeBracket Delimiter
highlight default link recipeEnd Delimiter
highlight default link recipeText String
highlight default link recipeEscape SpecialChar
highlight default link recipeComment Comment
highlight default link recipeWrong Error

let b:current_syntax = 'recipe'
let &cpoptions = s:keep
unlet s:keep
