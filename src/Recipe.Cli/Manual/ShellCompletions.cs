namespace Recipe.Cli.Manual;

/// <summary>
/// The lines that make a shell complete verbs, options and their values. The program itself is asked each time, so they need not be written again
/// with a new version.
/// </summary>
internal static class ShellCompletions
{
    // What begins with a hyphen or a slash is offered only to who has typed one; where nothing is left the shell completes files.
    private static readonly Dictionary<string, string> Scripts = new(StringComparer.Ordinal)
    {
        ["bash"] = """
            # recipe completions bash > ~/.local/share/bash-completion/completions/recipe
            _recipe() {
              local line="${COMP_LINE:0:COMP_POINT}" word="${COMP_WORDS[COMP_CWORD]}" found
              line="recipe${line#"${COMP_WORDS[0]}"}"
              COMPREPLY=()
              while IFS= read -r found; do
                case "$found" in
                  "$word"*) if [[ "$found" != [-/]* || "$word" == -* ]]; then COMPREPLY+=("$found"); fi ;;
                esac
              done < <("${COMP_WORDS[0]}" "[suggest:${#line}]" "$line" 2>/dev/null)
            }
            complete -o bashdefault -o default -F _recipe recipe

            """,
        ["zsh"] = """
            #compdef recipe
            # recipe completions zsh > a folder of your fpath, as _recipe
            _recipe() {
              local line="recipe${LBUFFER#${words[1]}}" word="${words[CURRENT]}"
              local -a found
              found=("${(@f)$("${words[1]}" "[suggest:${#line}]" "$line" 2>/dev/null)}")
              [[ "$word" == -* ]] || found=(${found:#[-/]*})
              found=(${(M)found:#${word}*})
              if (( ${#found} )); then compadd -U -- "${found[@]}"; else _files; fi
            }
            if [[ "${zsh_eval_context[-1]}" == loadautofunc ]]; then _recipe "$@"; else compdef _recipe recipe; fi

            """,
        ["fish"] = """
            # recipe completions fish > ~/.config/fish/completions/recipe.fish
            function __recipe_completions
              set -l words (commandline -opc)
              set -l word (commandline -ct)
              set -l line (string join ' ' -- recipe $words[2..-1] $word)
              set -l offered
              for found in ($words[1] "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null)
                if string match -q -- "$word*" $found; and begin; not string match -qr '^[-/]' -- $found; or string match -q -- '-*' $word; end
                  set -a offered $found
                end
              end
              if set -q offered[1]
                string join \n -- $offered
              else
                __fish_complete_path $word
              end
            end
            complete -c recipe -f -a '(__recipe_completions)'

            """,
        ["powershell"] = """
            # recipe completions powershell >> $PROFILE
            Register-ArgumentCompleter -Native -CommandName recipe -ScriptBlock {
              param($word, $command, $position)
              $line = $command.ToString()
              if ($line.Length -lt $position) { $line = $line.PadRight($position) } else { $line = $line.Substring(0, $position) }
              & recipe "[suggest:$($line.Length)]" $line 2>$null | Where-Object { $_ -like "$word*" -and ($_ -notmatch '^[-/]' -or $word -like '-*') } |
                ForEach-Object { [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_) }
            }

            """,
    };

    /// <summary>The shells there are lines for.</summary>
    public static IEnumerable<string> Shells => Scripts.Keys;

    /// <summary>The lines for a shell.</summary>
    public static string For(string shell) => Scripts[shell];
}
