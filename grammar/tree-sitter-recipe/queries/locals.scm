(source_file) @local.scope

; Names of materials, moulds, parts and values are known in the whole file.
(let name: (word) @local.definition)
(source_file (entry . head: (word) . (name) @local.definition block: (block)))

(name) @local.reference
