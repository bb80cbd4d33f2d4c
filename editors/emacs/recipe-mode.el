;;; recipe-mode.el --- Recipes for thin composite parts -*- lexical-binding: t; -*-

;; Version: 0.1.0
;; Package-Requires: ((emacs "27.1"))
;; Keywords: languages
;; SPDX-License-Identifier: MIT

;;; Commentary:

;; A major mode for *.recipe files: colours, indentation and, through eglot, the language server of the program `recipe'.
;; The lists of words are written by tests/Recipe.Semantics.Tests (RECIPE_UPDATE_GOLDENS=1); the rest is written by hand.

;;; Code:

(defgroup recipe nil
  "Recipes for thin composite parts."
  :group 'languages)

(defcustom recipe-program "recipe"
  "The program whose language server eglot starts."
  :type 'string)

(defcustom recipe-indent-offset 2
  "Blanks for each block."
  :type 'integer
  :safe #'integerp)

(defconst recipe--declarations
  '(;; words: declarations
    "mould-material" "release-agent" "release-film" "sealant-tape" "surface-coat" "flow-medium" "flash-tape"
    "catch-pot" "adhesive" "bag-film" "breather" "gel-coat" "peel-ply" "bleeder" "explore" "pattern" "variant"
    "fabric" "insert" "build" "fibre" "mould" "resin" "caul" "core" "hose" "part" "port" "rule" "shop" "veil"
    "mat" "ud"
    ;; end of words
    ))

(defconst recipe--directives
  '(;; words: directives
    "findings" "language" "accept" "prices" "stock" "use"
    ;; end of words
    ))

(defconst recipe--blocks
  '(;; words: blocks
    "hardener" "kinetics" "planned" "prepreg" "release" "surface" "wet-out" "either" "figure" "finish" "infuse"
    "safety" "vacuum" "count" "every" "least" "plies" "cure" "good" "join" "most" "must" "when" "any" "bad"
    "bag" "mix" "not" "sum" "no"
    ;; end of words
    ))

(defconst recipe--lines
  '(;; words: lines
    "glass-transition-limit" "compressive-strength" "transverse-expansion" "minimum-temperature"
    "pulls-since-release" "transverse-modulus" "mould-temperature" "resin-temperature" "glass-transition"
    "heat-of-reaction" "heat-stabilised" "pre-accelerated" "inner-diameter" "self-releasing" "store-humidity"
    "fibre-content" "gauge-checked" "locking-angle" "resin-content" "shear-modulus" "stays-in-part"
    "thermocouples" "areal-weight" "fibre-angles" "permeability" "release-film" "resin-pickup" "resin-uptake"
    "sealant-tape" "strain-limit" "check-valve" "disposition" "flow-medium" "largest-pot" "perforation"
    "roll-length" "silent-when" "ventilation" "acceptable" "clamp-feed" "cures-with" "feed-lines" "heat-limit"
    "laminators" "leak-check" "post-cured" "reinforced" "respirator" "seal-coats" "second-cup" "shelf-life"
    "stick-test" "warp-share" "bond-line" "catch-pot" "chemistry" "deviation" "drop-test" "expansion"
    "feed-line" "film-life" "full-cure" "post-cure" "shrinkage" "tape-land" "thickness" "untrimmed" "viscosity"
    "adhesive" "altitude" "bag-film" "breather" "capacity" "coverage" "currency" "envelope" "flexible"
    "gel-time" "humidity" "leftover" "moisture" "out-life" "out-time" "outdoors" "peel-ply" "peroxide"
    "pinholes" "pot-life" "pull-aid" "quantity" "revision" "severity" "silicone" "solvents" "undercut"
    "bleeder" "changed" "coating" "default" "demould" "density" "freezer" "inspect" "made-by" "made-of"
    "made-on" "mandrel" "message" "modulus" "overlap" "poisson" "prepare" "process" "replace" "reserve"
    "section" "service" "stagger" "support" "abrade" "accept" "action" "binder" "choose" "closes" "coated"
    "colour" "debulk" "defect" "family" "filler" "fillet" "flange" "gloves" "halves" "hazard" "helper" "insert"
    "length" "manner" "mixing" "pickup" "pleats" "porous" "radius" "reason" "region" "remedy" "remove" "sample"
    "scrape" "settle" "signed" "sizing" "source" "spills" "target" "tested" "volume" "within" "align" "bleed"
    "cause" "cloth" "coats" "debag" "degas" "draft" "drape" "drill" "edges" "fibre" "gauge" "lasts" "limit"
    "mixed" "mould" "night" "other" "paint" "paper" "parts" "point" "price" "prime" "pulls" "resin" "scale"
    "scarf" "sheet" "spare" "start" "state" "store" "stuff" "title" "tools" "units" "waxed" "weave" "weigh"
    "where" "width" "axis" "bond" "caul" "cell" "coat" "cool" "draw" "dust" "fill" "film" "hold" "hose" "keep"
    "kind" "left" "load" "loss" "mass" "note" "oven" "pace" "path" "peel" "port" "pots" "pull" "pump" "ramp"
    "rise" "room" "seal" "seam" "ship" "step" "stir" "tape" "thaw" "time" "tray" "trim" "used" "vent" "wait"
    "want" "wash" "add" "cup" "cut" "dry" "fix" "kit" "off" "pot" "use" "by"
    ;; end of words
    ))

(defconst recipe--clauses
  '(;; words: clauses
    "resin-content" "join-lines" "laminators" "perforated" "thickness" "unwrapped" "absolute" "at-least"
    "diameter" "hardener" "isolated" "mixed-at" "received" "ultimate" "ambient" "assumed" "at-most" "because"
    "carries" "chamfer" "counted" "cut-out" "dead-at" "exhaust" "expires" "hottest" "laid-on" "overlap"
    "reached" "smaller" "support" "across" "beyond" "covers" "height" "lasted" "length" "offcut" "opened"
    "pieces" "radius" "reused" "sealed" "source" "vacuum" "volume" "weight" "within" "after" "along" "below"
    "coats" "darts" "depth" "every" "holds" "limit" "parts" "resin" "solid" "steps" "strip" "under" "until"
    "width" "at-x" "at-y" "at-z" "band" "edge" "face" "from" "like" "mass" "over" "pull" "rise" "sits" "size"
    "span" "step" "then" "trim" "unit" "wait" "with" "arc" "dry" "for" "gap" "lot" "off" "at" "by" "in" "no"
    "of" "on" "to"
    ;; end of words
    ))

(defconst recipe--values
  '(;; words: values
    "cured-then-bonded" "cured-then-taped" "with-accelerator" "bending-across" "half-ellipsoid"
    "modulus-across" "semi-permanent" "stretch-across" "bending-along" "modulus-along" "spherical-cap"
    "press-across" "accelerator" "liquid-film" "orientation" "clock-left" "paraboloid" "softens-at"
    "structural" "times-over" "vinylester" "wet-in-wet" "anhydride" "breathing" "extracted" "pin-prick"
    "polyester" "to-vacuum" "breather" "cosmetic" "cure-end" "cylinder" "emulsion" "enclosed" "material"
    "outdoors" "peroxide" "phenolic" "released" "repaired" "revolved" "seasoned" "stitched" "between" "by-heat"
    "demould" "grooved" "indoors" "infused" "mineral" "minus-x" "minus-y" "minus-z" "pigment" "prepreg"
    "repeats" "sawdust" "solvent" "stretch" "warning" "advice" "bagged" "filler" "flange" "flying" "insert"
    "letter" "medium" "metric" "powder" "random" "repair" "above" "amine" "apart" "clean" "cured" "debag"
    "epoxy" "error" "front" "group" "least" "light" "patch" "plain" "press" "scrap" "shear" "sheet" "swept"
    "water" "waxed" "white" "write" "area" "back" "bare" "both" "cone" "core" "cost" "dark" "disc" "down"
    "even" "feed" "fill" "flat" "foam" "hand" "heat" "mesh" "most" "none" "open" "part" "pots" "rags" "room"
    "slit" "tray" "vent" "warm" "add" "any" "bin" "box" "new" "use" "wax" "wet" "a4" "cm" "ft" "mm" "up" "us"
    "m" "x" "y" "z"
    ;; end of words
    ))

(defconst recipe--units
  '(;; words: units
    "millimeter" "millimetre" "degC-diff" "degF-diff" "microns" "minutes" "newtons" "percent" "seconds"
    "denier" "inches" "liters" "litres" "meters" "metres" "micron" "minute" "months" "newton" "second" "grams"
    "hours" "liter" "litre" "meter" "metre" "month" "weeks" "yards" "years" "Torr" "days" "degC" "degF" "dtex"
    "feet" "floz" "foot" "gram" "hour" "inHg" "inch" "mbar" "mmHg" "sqft" "sqin" "sqyd" "thou" "torr" "week"
    "yard" "year" "AUD" "BRL" "CAD" "CHF" "CNY" "CZK" "DKK" "EUR" "GBP" "GPa" "HKD" "HUF" "IDR" "ILS" "INR"
    "ISK" "JPY" "KRW" "MPa" "MXN" "MYR" "Msi" "NOK" "NZD" "PHP" "PLN" "RON" "RSD" "SEK" "SGD" "THB" "TRY" "TWD"
    "UAH" "USD" "VND" "ZAR" "atm" "bar" "cfm" "cm2" "cm3" "cm²" "cm³" "day" "deg" "dm2" "dm²" "ft2" "ft3" "ft²"
    "ft³" "gal" "gsm" "hPa" "in2" "in3" "in²" "in³" "kPa" "ksi" "lbf" "lbs" "mPa" "mil" "min" "mm2" "mm3" "mm²"
    "mm³" "ppm" "psi" "sec" "sqm" "tex" "yd2" "yd²" "Pa" "cP" "cc" "cm" "ft" "hr" "in" "kJ" "kN" "kW" "kg" "km"
    "lb" "m2" "m3" "mL" "mg" "ml" "mm" "m²" "m³" "oz" "qt" "um" "yd" "°C" "°F" "µm" "ºC" "ºF" "˚C" "˚F" "μm"
    "%" "J" "K" "L" "N" "W" "d" "g" "h" "l" "m" "s" "°" "º" "˚" "℃" "℉"
    ;; end of words
    ))

(defconst recipe--word "[[:alpha:]_][[:alnum:]_]*\\(?:-[[:alnum:]_]+\\)*")

(defconst recipe--unit
  (let ((simple (regexp-opt recipe--units t)))
    (concat simple "\\(?:[/.·]" simple "\\)*")))

(defvar recipe-mode-syntax-table
  (let ((table (make-syntax-table)))
    (modify-syntax-entry ?# "<" table)
    (modify-syntax-entry ?\n ">" table)
    (modify-syntax-entry ?\r ">" table)
    (modify-syntax-entry ?\" "\"" table)
    (modify-syntax-entry ?\\ "\\" table)
    (modify-syntax-entry ?- "_" table)
    (modify-syntax-entry ?_ "_" table)
    (dolist (sign '(?+ ?* ?/ ?= ?: ?\; ?% ?. ?,))
      (modify-syntax-entry sign "." table))
    table))

;; A text ends on its line, closed or not: the quote that opens one that is not and the end of its line are its fences.
(defconst recipe--propertize
  (syntax-propertize-rules
   ("\\(#\\)[^\n]*" (1 "<"))
   ("\\(\"\\)\\(?:[^\"\\\n]\\|\\\\.\\)*\\(\"\\)" (1 "\"") (2 "\""))
   ("\\(\"\\)\\(?:[^\"\\\n]\\|\\\\[^\n]\\)*\\\\?\\(\n\\)" (1 "|") (2 "|"))))

(defun recipe--known (face)
  "FACE of a word that begins a line: the match says where it stands."
  (let* ((word (match-string-no-properties 1))
         (inside (save-excursion (> (nth 0 (syntax-ppss (match-beginning 1))) 0))))
    (cond ((equal word "let") 'font-lock-keyword-face)
          ((and inside (member word recipe--blocks)) 'font-lock-keyword-face)
          ((and inside (member word recipe--lines)) 'font-lock-builtin-face)
          ((and (not inside) (member word recipe--declarations)) 'font-lock-keyword-face)
          ((and (not inside) (member word recipe--directives)) 'font-lock-preprocessor-face)
          (t face))))

(defun recipe--named ()
  "Face of the word behind the first one: a new name at the top level, or nil."
  (when (and (member (match-string-no-properties 1) (cons "let" recipe--declarations))
             (save-excursion (zerop (nth 0 (syntax-ppss (match-beginning 1))))))
    'font-lock-type-face))

(defconst recipe-font-lock-keywords
  `((,(concat "\\(?:^\\|[{};]\\)[ \t]*\\(" recipe--word "\\)\\(?:[ \t]+\\(" recipe--word "\\)\\)?")
     (1 (recipe--known 'font-lock-variable-name-face))
     (2 (recipe--named) nil t))
    ("\\_<[0-9]\\{4\\}-[0-9]\\{2\\}-[0-9]\\{2\\}\\_>" . font-lock-constant-face)
    (,(concat "\\([0-9]\\|)\\)[ \t]*\\(" recipe--unit "\\)\\(?:\\_>\\|[^[:alnum:]_-]\\|$\\)") (2 font-lock-type-face))
    ("\\_<[0-9]+\\(?:\\.[0-9]+\\)?\\(?:[eE][+-]?[0-9]+\\)?" . font-lock-constant-face)
    ("\\_<x[0-9]+\\_>" . font-lock-constant-face)
    (,(concat "\\_<" (regexp-opt (append '("yes" "no") recipe--values) t) "\\_>") . font-lock-constant-face)
    (,(concat "\\_<" (regexp-opt recipe--clauses t) "\\_>") . font-lock-builtin-face))
  "What `recipe-mode' colours.")

(defun recipe-indent-line ()
  "Indents the line by the blocks and parentheses that are open before it."
  (interactive)
  (let* ((from-end (- (point-max) (point)))
         (depth (save-excursion
                  (back-to-indentation)
                  (- (nth 0 (syntax-ppss)) (if (looking-at-p "[})]") 1 0)))))
    (indent-line-to (max 0 (* recipe-indent-offset depth)))
    (when (> (- (point-max) from-end) (point))
      (goto-char (- (point-max) from-end)))))

;;;###autoload
(define-derived-mode recipe-mode prog-mode "Recipe"
  "Major mode for recipes."
  (setq-local comment-start "# ")
  (setq-local comment-start-skip "#+[ \t]*")
  (setq-local comment-end "")
  (setq-local indent-tabs-mode nil)
  (setq-local indent-line-function #'recipe-indent-line)
  (setq-local electric-indent-chars '(?\n ?\} ?\)))
  (setq-local syntax-propertize-function recipe--propertize)
  (setq-local font-lock-defaults '(recipe-font-lock-keywords))
  (setq-local imenu-generic-expression
              `((nil ,(concat "^" (regexp-opt recipe--declarations) "[ \t]+\\(" recipe--word "\\)") 1))))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\.recipe\\'" . recipe-mode))

(defvar eglot-server-programs)
(with-eval-after-load 'eglot
  (add-to-list 'eglot-server-programs
               `(recipe-mode . ,(lambda (&rest _) (list recipe-program "lsp")))))

(provide 'recipe-mode)
;;; recipe-mode.el ends here
