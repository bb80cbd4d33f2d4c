; Some editors take the first of two patterns that fit and some the last: so no two of these fit the same word. Lists of words are
; written by tests/Recipe.Semantics.Tests (RECIPE_UPDATE_GOLDENS=1).

(comment) @comment

(text) @string
(escape) @string.escape
(date) @constant
(number) @number
(unit) @type.builtin

["+" "-" "*" "/" "=" ":" "+/-" "±"] @operator
[(to) (times)] @operator
["{" "}" "(" ")"] @punctuation.bracket
";" @punctuation.delimiter

"let" @keyword
(let name: (word) @constant)
(parenthesis (name) @constant)
(binary (name) @constant)
(negation (name) @constant)
(let value: (name) @constant)

; The word that begins a line says what the line is about.
(source_file (entry head: (word) @keyword (#any-of? @keyword
  ; words: declarations
  "mould-material" "release-agent" "release-film" "sealant-tape" "surface-coat" "flow-medium" "flash-tape"
  "catch-pot" "adhesive" "bag-film" "breather" "gel-coat" "peel-ply" "bleeder" "explore" "pattern" "variant"
  "fabric" "insert" "build" "fibre" "mould" "resin" "caul" "core" "hose" "part" "port" "rule" "shop" "veil"
  "mat" "ud"
  ; end of words
  ; words: directives
  "findings" "language" "accept" "prices" "stock" "use"
  ; end of words
)))
(block (entry head: (word) @keyword (#any-of? @keyword
  ; words: blocks
  "hardener" "kinetics" "planned" "prepreg" "release" "surface" "wet-out" "either" "figure" "finish" "infuse"
  "safety" "vacuum" "count" "every" "least" "plies" "cure" "good" "join" "most" "must" "when" "any" "bad" "bag"
  "mix" "not" "sum" "no"
  ; end of words
)))
(block (entry head: (word) @property (#any-of? @property
  ; words: lines
  "glass-transition-limit" "compressive-strength" "transverse-expansion" "minimum-temperature"
  "pulls-since-release" "transverse-modulus" "mould-temperature" "resin-temperature" "glass-transition"
  "heat-of-reaction" "heat-stabilised" "pre-accelerated" "inner-diameter" "self-releasing" "store-humidity"
  "fibre-content" "gauge-checked" "locking-angle" "resin-content" "shear-modulus" "stays-in-part"
  "thermocouples" "areal-weight" "fibre-angles" "permeability" "release-film" "resin-pickup" "resin-uptake"
  "sealant-tape" "strain-limit" "check-valve" "disposition" "flow-medium" "largest-pot" "perforation"
  "roll-length" "silent-when" "ventilation" "acceptable" "clamp-feed" "cures-with" "feed-lines" "heat-limit"
  "laminators" "leak-check" "post-cured" "reinforced" "respirator" "seal-coats" "second-cup" "shelf-life"
  "stick-test" "warp-share" "bond-line" "catch-pot" "chemistry" "deviation" "drop-test" "expansion" "feed-line"
  "film-life" "full-cure" "post-cure" "shrinkage" "tape-land" "thickness" "untrimmed" "viscosity" "adhesive"
  "altitude" "bag-film" "breather" "capacity" "coverage" "currency" "envelope" "flexible" "gel-time" "humidity"
  "leftover" "moisture" "out-life" "out-time" "outdoors" "peel-ply" "peroxide" "pinholes" "pot-life" "pull-aid"
  "quantity" "revision" "severity" "silicone" "solvents" "undercut" "bleeder" "changed" "coating" "default"
  "demould" "density" "freezer" "inspect" "made-by" "made-of" "made-on" "mandrel" "message" "modulus" "overlap"
  "poisson" "prepare" "process" "replace" "reserve" "section" "service" "stagger" "support" "abrade" "accept"
  "action" "binder" "choose" "closes" "coated" "colour" "debulk" "defect" "family" "filler" "fillet" "flange"
  "gloves" "halves" "hazard" "helper" "insert" "length" "manner" "mixing" "pickup" "pleats" "porous" "radius"
  "reason" "region" "remedy" "remove" "sample" "scrape" "settle" "signed" "sizing" "source" "spills" "target"
  "tested" "volume" "within" "align" "bleed" "cause" "cloth" "coats" "debag" "degas" "draft" "drape" "drill"
  "edges" "fibre" "gauge" "lasts" "limit" "mixed" "mould" "night" "other" "paint" "paper" "parts" "point"
  "price" "prime" "pulls" "resin" "scale" "scarf" "sheet" "spare" "start" "state" "store" "stuff" "title"
  "tools" "units" "waxed" "weave" "weigh" "where" "width" "axis" "bond" "caul" "cell" "coat" "cool" "draw"
  "dust" "fill" "film" "hold" "hose" "keep" "kind" "left" "load" "loss" "mass" "note" "oven" "pace" "path"
  "peel" "port" "pots" "pull" "pump" "ramp" "rise" "room" "seal" "seam" "ship" "step" "stir" "tape" "thaw"
  "time" "tray" "trim" "used" "vent" "wait" "want" "wash" "add" "cup" "cut" "dry" "fix" "kit" "off" "pot" "use"
  "by"
  ; end of words
)))

; Else it is a name: of a ply, of a material.
(block (entry head: (word) @variable (#not-any-of? @variable
  ; words: blocks
  "hardener" "kinetics" "planned" "prepreg" "release" "surface" "wet-out" "either" "figure" "finish" "infuse"
  "safety" "vacuum" "count" "every" "least" "plies" "cure" "good" "join" "most" "must" "when" "any" "bad" "bag"
  "mix" "not" "sum" "no"
  ; end of words
  ; words: lines
  "glass-transition-limit" "compressive-strength" "transverse-expansion" "minimum-temperature"
  "pulls-since-release" "transverse-modulus" "mould-temperature" "resin-temperature" "glass-transition"
  "heat-of-reaction" "heat-stabilised" "pre-accelerated" "inner-diameter" "self-releasing" "store-humidity"
  "fibre-content" "gauge-checked" "locking-angle" "resin-content" "shear-modulus" "stays-in-part"
  "thermocouples" "areal-weight" "fibre-angles" "permeability" "release-film" "resin-pickup" "resin-uptake"
  "sealant-tape" "strain-limit" "check-valve" "disposition" "flow-medium" "largest-pot" "perforation"
  "roll-length" "silent-when" "ventilation" "acceptable" "clamp-feed" "cures-with" "feed-lines" "heat-limit"
  "laminators" "leak-check" "post-cured" "reinforced" "respirator" "seal-coats" "second-cup" "shelf-life"
  "stick-test" "warp-share" "bond-line" "catch-pot" "chemistry" "deviation" "drop-test" "expansion" "feed-line"
  "film-life" "full-cure" "post-cure" "shrinkage" "tape-land" "thickness" "untrimmed" "viscosity" "adhesive"
  "altitude" "bag-film" "breather" "capacity" "coverage" "currency" "envelope" "flexible" "gel-time" "humidity"
  "leftover" "moisture" "out-life" "out-time" "outdoors" "peel-ply" "peroxide" "pinholes" "pot-life" "pull-aid"
  "quantity" "revision" "severity" "silicone" "solvents" "undercut" "bleeder" "changed" "coating" "default"
  "demould" "density" "freezer" "inspect" "made-by" "made-of" "made-on" "mandrel" "message" "modulus" "overlap"
  "poisson" "prepare" "process" "replace" "reserve" "section" "service" "stagger" "support" "abrade" "accept"
  "action" "binder" "choose" "closes" "coated" "colour" "debulk" "defect" "family" "filler" "fillet" "flange"
  "gloves" "halves" "hazard" "helper" "insert" "length" "manner" "mixing" "pickup" "pleats" "porous" "radius"
  "reason" "region" "remedy" "remove" "sample" "scrape" "settle" "signed" "sizing" "source" "spills" "target"
  "tested" "volume" "within" "align" "bleed" "cause" "cloth" "coats" "debag" "degas" "draft" "drape" "drill"
  "edges" "fibre" "gauge" "lasts" "limit" "mixed" "mould" "night" "other" "paint" "paper" "parts" "point"
  "price" "prime" "pulls" "resin" "scale" "scarf" "sheet" "spare" "start" "state" "store" "stuff" "title"
  "tools" "units" "waxed" "weave" "weigh" "where" "width" "axis" "bond" "caul" "cell" "coat" "cool" "draw"
  "dust" "fill" "film" "hold" "hose" "keep" "kind" "left" "load" "loss" "mass" "note" "oven" "pace" "path"
  "peel" "port" "pots" "pull" "pump" "ramp" "rise" "room" "seal" "seam" "ship" "step" "stir" "tape" "thaw"
  "time" "tray" "trim" "used" "vent" "wait" "want" "wash" "add" "cup" "cut" "dry" "fix" "kit" "off" "pot" "use"
  "by"
  ; end of words
)))
(source_file (entry head: (word) @variable (#not-any-of? @variable
  ; words: declarations
  "mould-material" "release-agent" "release-film" "sealant-tape" "surface-coat" "flow-medium" "flash-tape"
  "catch-pot" "adhesive" "bag-film" "breather" "gel-coat" "peel-ply" "bleeder" "explore" "pattern" "variant"
  "fabric" "insert" "build" "fibre" "mould" "resin" "caul" "core" "hose" "part" "port" "rule" "shop" "veil"
  "mat" "ud"
  ; end of words
  ; words: directives
  "findings" "language" "accept" "prices" "stock" "use"
  ; end of words
)))

; The name that a declaration gives.
(source_file (entry head: (word) . (name) @type block: (block)))

; Words behind it.
(entry (name) @keyword.operator (#any-of? @keyword.operator
  ; words: clauses
  "resin-content" "join-lines" "laminators" "perforated" "thickness" "unwrapped" "absolute" "at-least"
  "diameter" "hardener" "isolated" "mixed-at" "received" "ultimate" "ambient" "assumed" "at-most" "because"
  "carries" "chamfer" "counted" "cut-out" "dead-at" "exhaust" "expires" "hottest" "laid-on" "overlap" "reached"
  "smaller" "support" "across" "beyond" "covers" "height" "lasted" "length" "offcut" "opened" "pieces" "radius"
  "reused" "sealed" "source" "vacuum" "volume" "weight" "within" "after" "along" "below" "coats" "darts"
  "depth" "every" "holds" "limit" "parts" "resin" "solid" "steps" "strip" "under" "until" "width" "at-x" "at-y"
  "at-z" "band" "edge" "face" "from" "like" "mass" "over" "pull" "rise" "sits" "size" "span" "step" "then"
  "trim" "unit" "wait" "with" "arc" "dry" "for" "gap" "lot" "off" "at" "by" "in" "no" "of" "on" "to"
  ; end of words
))
(entry (name) @constant.builtin (#any-of? @constant.builtin "yes"
  ; words: values
  "cured-then-bonded" "cured-then-taped" "with-accelerator" "bending-across" "half-ellipsoid" "modulus-across"
  "semi-permanent" "stretch-across" "bending-along" "modulus-along" "spherical-cap" "press-across"
  "accelerator" "liquid-film" "orientation" "clock-left" "paraboloid" "softens-at" "structural" "times-over"
  "vinylester" "wet-in-wet" "anhydride" "breathing" "extracted" "pin-prick" "polyester" "to-vacuum" "breather"
  "cosmetic" "cure-end" "cylinder" "emulsion" "enclosed" "material" "outdoors" "peroxide" "phenolic" "released"
  "repaired" "revolved" "seasoned" "stitched" "between" "by-heat" "demould" "grooved" "indoors" "infused"
  "mineral" "minus-x" "minus-y" "minus-z" "pigment" "prepreg" "repeats" "sawdust" "solvent" "stretch" "warning"
  "advice" "bagged" "filler" "flange" "flying" "insert" "letter" "medium" "metric" "powder" "random" "repair"
  "above" "amine" "apart" "clean" "cured" "debag" "epoxy" "error" "front" "group" "least" "light" "patch"
  "plain" "press" "scrap" "shear" "sheet" "swept" "water" "waxed" "white" "write" "area" "back" "bare" "both"
  "cone" "core" "cost" "dark" "disc" "down" "even" "feed" "fill" "flat" "foam" "hand" "heat" "mesh" "most"
  "none" "open" "part" "pots" "rags" "room" "slit" "tray" "vent" "warm" "add" "any" "bin" "box" "new" "use"
  "wax" "wet" "a4" "cm" "ft" "mm" "up" "us" "m" "x" "y" "z"
  ; end of words
))
(entry (name) @number (#match? @number "^x[0-9]+$"))

; All other words are names.
(block (entry (name) @variable (#not-match? @variable "^(x[0-9]+|yes)$") (#not-any-of? @variable
  ; words: clauses
  "resin-content" "join-lines" "laminators" "perforated" "thickness" "unwrapped" "absolute" "at-least"
  "diameter" "hardener" "isolated" "mixed-at" "received" "ultimate" "ambient" "assumed" "at-most" "because"
  "carries" "chamfer" "counted" "cut-out" "dead-at" "exhaust" "expires" "hottest" "laid-on" "overlap" "reached"
  "smaller" "support" "across" "beyond" "covers" "height" "lasted" "length" "offcut" "opened" "pieces" "radius"
  "reused" "sealed" "source" "vacuum" "volume" "weight" "within" "after" "along" "below" "coats" "darts"
  "depth" "every" "holds" "limit" "parts" "resin" "solid" "steps" "strip" "under" "until" "width" "at-x" "at-y"
  "at-z" "band" "edge" "face" "from" "like" "mass" "over" "pull" "rise" "sits" "size" "span" "step" "then"
  "trim" "unit" "wait" "with" "arc" "dry" "for" "gap" "lot" "off" "at" "by" "in" "no" "of" "on" "to"
  ; end of words
  ; words: values
  "cured-then-bonded" "cured-then-taped" "with-accelerator" "bending-across" "half-ellipsoid" "modulus-across"
  "semi-permanent" "stretch-across" "bending-along" "modulus-along" "spherical-cap" "press-across"
  "accelerator" "liquid-film" "orientation" "clock-left" "paraboloid" "softens-at" "structural" "times-over"
  "vinylester" "wet-in-wet" "anhydride" "breathing" "extracted" "pin-prick" "polyester" "to-vacuum" "breather"
  "cosmetic" "cure-end" "cylinder" "emulsion" "enclosed" "material" "outdoors" "peroxide" "phenolic" "released"
  "repaired" "revolved" "seasoned" "stitched" "between" "by-heat" "demould" "grooved" "indoors" "infused"
  "mineral" "minus-x" "minus-y" "minus-z" "pigment" "prepreg" "repeats" "sawdust" "solvent" "stretch" "warning"
  "advice" "bagged" "filler" "flange" "flying" "insert" "letter" "medium" "metric" "powder" "random" "repair"
  "above" "amine" "apart" "clean" "cured" "debag" "epoxy" "error" "front" "group" "least" "light" "patch"
  "plain" "press" "scrap" "shear" "sheet" "swept" "water" "waxed" "white" "write" "area" "back" "bare" "both"
  "cone" "core" "cost" "dark" "disc" "down" "even" "feed" "fill" "flat" "foam" "hand" "heat" "mesh" "most"
  "none" "open" "part" "pots" "rags" "room" "slit" "tray" "vent" "warm" "add" "any" "bin" "box" "new" "use"
  "wax" "wet" "a4" "cm" "ft" "mm" "up" "us" "m" "x" "y" "z"
  ; end of words
)))
(source_file (entry !block (name) @variable (#not-match? @variable "^(x[0-9]+|yes)$") (#not-any-of? @variable
  ; words: clauses
  "resin-content" "join-lines" "laminators" "perforated" "thickness" "unwrapped" "absolute" "at-least"
  "diameter" "hardener" "isolated" "mixed-at" "received" "ultimate" "ambient" "assumed" "at-most" "because"
  "carries" "chamfer" "counted" "cut-out" "dead-at" "exhaust" "expires" "hottest" "laid-on" "overlap" "reached"
  "smaller" "support" "across" "beyond" "covers" "height" "lasted" "length" "offcut" "opened" "pieces" "radius"
  "reused" "sealed" "source" "vacuum" "volume" "weight" "within" "after" "along" "below" "coats" "darts"
  "depth" "every" "holds" "limit" "parts" "resin" "solid" "steps" "strip" "under" "until" "width" "at-x" "at-y"
  "at-z" "band" "edge" "face" "from" "like" "mass" "over" "pull" "rise" "sits" "size" "span" "step" "then"
  "trim" "unit" "wait" "with" "arc" "dry" "for" "gap" "lot" "off" "at" "by" "in" "no" "of" "on" "to"
  ; end of words
  ; words: values
  "cured-then-bonded" "cured-then-taped" "with-accelerator" "bending-across" "half-ellipsoid" "modulus-across"
  "semi-permanent" "stretch-across" "bending-along" "modulus-along" "spherical-cap" "press-across"
  "accelerator" "liquid-film" "orientation" "clock-left" "paraboloid" "softens-at" "structural" "times-over"
  "vinylester" "wet-in-wet" "anhydride" "breathing" "extracted" "pin-prick" "polyester" "to-vacuum" "breather"
  "cosmetic" "cure-end" "cylinder" "emulsion" "enclosed" "material" "outdoors" "peroxide" "phenolic" "released"
  "repaired" "revolved" "seasoned" "stitched" "between" "by-heat" "demould" "grooved" "indoors" "infused"
  "mineral" "minus-x" "minus-y" "minus-z" "pigment" "prepreg" "repeats" "sawdust" "solvent" "stretch" "warning"
  "advice" "bagged" "filler" "flange" "flying" "insert" "letter" "medium" "metric" "powder" "random" "repair"
  "above" "amine" "apart" "clean" "cured" "debag" "epoxy" "error" "front" "group" "least" "light" "patch"
  "plain" "press" "scrap" "shear" "sheet" "swept" "water" "waxed" "white" "write" "area" "back" "bare" "both"
  "cone" "core" "cost" "dark" "disc" "down" "even" "feed" "fill" "flat" "foam" "hand" "heat" "mesh" "most"
  "none" "open" "part" "pots" "rags" "room" "slit" "tray" "vent" "warm" "add" "any" "bin" "box" "new" "use"
  "wax" "wet" "a4" "cm" "ft" "mm" "up" "us" "m" "x" "y" "z"
  ; end of words
)))
(source_file (entry (name) (name) @variable block: (block) (#not-any-of? @variable
  ; words: clauses
  "resin-content" "join-lines" "laminators" "perforated" "thickness" "unwrapped" "absolute" "at-least"
  "diameter" "hardener" "isolated" "mixed-at" "received" "ultimate" "ambient" "assumed" "at-most" "because"
  "carries" "chamfer" "counted" "cut-out" "dead-at" "exhaust" "expires" "hottest" "laid-on" "overlap" "reached"
  "smaller" "support" "across" "beyond" "covers" "height" "lasted" "length" "offcut" "opened" "pieces" "radius"
  "reused" "sealed" "source" "vacuum" "volume" "weight" "within" "after" "along" "below" "coats" "darts"
  "depth" "every" "holds" "limit" "parts" "resin" "solid" "steps" "strip" "under" "until" "width" "at-x" "at-y"
  "at-z" "band" "edge" "face" "from" "like" "mass" "over" "pull" "rise" "sits" "size" "span" "step" "then"
  "trim" "unit" "wait" "with" "arc" "dry" "for" "gap" "lot" "off" "at" "by" "in" "no" "of" "on" "to"
  ; end of words
  ; words: values
  "cured-then-bonded" "cured-then-taped" "with-accelerator" "bending-across" "half-ellipsoid" "modulus-across"
  "semi-permanent" "stretch-across" "bending-along" "modulus-along" "spherical-cap" "press-across"
  "accelerator" "liquid-film" "orientation" "clock-left" "paraboloid" "softens-at" "structural" "times-over"
  "vinylester" "wet-in-wet" "anhydride" "breathing" "extracted" "pin-prick" "polyester" "to-vacuum" "breather"
  "cosmetic" "cure-end" "cylinder" "emulsion" "enclosed" "material" "outdoors" "peroxide" "phenolic" "released"
  "repaired" "revolved" "seasoned" "stitched" "between" "by-heat" "demould" "grooved" "indoors" "infused"
  "mineral" "minus-x" "minus-y" "minus-z" "pigment" "prepreg" "repeats" "sawdust" "solvent" "stretch" "warning"
  "advice" "bagged" "filler" "flange" "flying" "insert" "letter" "medium" "metric" "powder" "random" "repair"
  "above" "amine" "apart" "clean" "cured" "debag" "epoxy" "error" "front" "group" "least" "light" "patch"
  "plain" "press" "scrap" "shear" "sheet" "swept" "water" "waxed" "white" "write" "area" "back" "bare" "both"
  "cone" "core" "cost" "dark" "disc" "down" "even" "feed" "fill" "flat" "foam" "hand" "heat" "mesh" "most"
  "none" "open" "part" "pots" "rags" "room" "slit" "tray" "vent" "warm" "add" "any" "bin" "box" "new" "use"
  "wax" "wet" "a4" "cm" "ft" "mm" "up" "us" "m" "x" "y" "z"
  ; end of words
)))
