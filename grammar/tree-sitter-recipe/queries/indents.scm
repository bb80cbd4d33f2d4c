; Both sets of names that editors use.
(block) @indent @indent.begin
(parenthesis) @indent @indent.begin
["}" ")"] @outdent @indent.branch @indent.end
