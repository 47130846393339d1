namespace Journal.Cli.Commands;

/// <summary>
/// What each shell runs when the tab key is pressed: it asks the program for the words that fit, by the directive
/// <c>[suggest:position]</c> of System.CommandLine. Where none fit, the shell offers files.
/// </summary>
internal static class CompletionScripts
{
    private const string Bash = """
        # journal: completion for bash
        _journal() {
            local IFS=$'\n'
            COMPREPLY=($(compgen -W "$(journal "[suggest:${COMP_POINT}]" "${COMP_LINE}" 2>/dev/null)" -- "${COMP_WORDS[COMP_CWORD]}"))
        }
        complete -o default -F _journal journal

        """;

    private const string Zsh = """
        #compdef journal
        # journal: completion for zsh
        _journal() {
            local line="${(j: :)words[1,CURRENT]}"
            local -a found
            found=("${(@f)$(journal "[suggest:${#line}]" "$line" 2>/dev/null)}")
            if [[ -n "$found[1]" ]]; then
                compadd -a found
            else
                _files
            fi
        }
        compdef _journal journal

        """;

    private const string Fish = """
        # journal: completion for fish
        function __journal_words
            set -l line (commandline -cp)
            journal "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null
        end
        complete -c journal -a '(__journal_words)'

        """;

    private const string PowerShell = """
        # journal: completion for PowerShell
        Register-ArgumentCompleter -Native -CommandName journal -ScriptBlock {
            param($word, $ast, $position)
            journal "[suggest:$position]" "$ast".PadRight($position) 2>$null |
                Where-Object { $_ -like "$word*" } |
                ForEach-Object { [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_) }
        }

        """;

    /// <summary>The script of each shell by its name.</summary>
    public static IReadOnlyDictionary<string, string> ByShell { get; } = new OrderedDictionary<string, string>
    {
        ["bash"] = Bash,
        ["zsh"] = Zsh,
        ["fish"] = Fish,
        ["powershell"] = PowerShell,
    };
}
