package main

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/pflag"
)

const completionUsage = `usage: matchmark completion bash|zsh|fish|powershell

Writes a script by which the shell completes commands, flags and file names:

  bash        source <(matchmark completion bash)
  zsh         source <(matchmark completion zsh)
  fish        matchmark completion fish | source
  powershell  matchmark completion powershell | Out-String | Invoke-Expression

`

// completion writes the script of one shell. The scripts are made here, of the table of
// commands: pflag has none, and the libraries that have bring a whole frame for
// commands with them for these hundred lines.
func completion(args []string, s streams) int {
	flags := newFlags("completion", s)
	if err := parse(flags, args); err != nil {
		return s.usage(err, completionUsage)
	}
	if flags.NArg() != 1 {
		return s.usage(errors.New("completion takes the name of a shell"), "hint: matchmark completion bash, zsh, fish or powershell\n")
	}
	write := map[string]func(io.Writer, streams){"bash": bashCompletion, "zsh": zshCompletion, "fish": fishCompletion, "powershell": powershellCompletion}[flags.Arg(0)]
	if write == nil {
		return s.usage(fmt.Errorf("%q is no shell known here", flags.Arg(0)), "hint: bash, zsh, fish or powershell\n")
	}
	write(s.out, s)
	return exitDone
}

// flagNames lists the flags of a command as they are typed.
func (c command) flagNames(s streams) []string {
	names := []string{"--help"}
	c.flagSet(s).VisitAll(func(f *pflag.Flag) { names = append(names, "--"+f.Name) })
	return names
}

// values are the words that may stand behind a command besides files.
func (c command) values() []string {
	switch c.name {
	case "schema":
		return []string{"definition", "job", "site"}
	case "completion":
		return []string{"bash", "zsh", "fish", "powershell"}
	}
	return nil
}

func bashCompletion(w io.Writer, s streams) {
	fmt.Fprintf(w, "_matchmark() {\n  local cur=\"${COMP_WORDS[COMP_CWORD]}\"\n  COMPREPLY=()\n  if [ \"$COMP_CWORD\" -eq 1 ]; then\n    COMPREPLY=($(compgen -W \"%s help --version\" -- \"$cur\"))\n    return\n  fi\n  case \"${COMP_WORDS[1]}\" in\n",
		strings.Join(commandNames(), " "))
	for _, c := range commands() {
		fmt.Fprintf(w, "    %s) local words=\"%s\" ;;\n", c.name, strings.Join(append(c.flagNames(s), c.values()...), " "))
	}
	fmt.Fprintf(w, "    help) local words=\"%s\" ;;\n    *) return ;;\n  esac\n  COMPREPLY=($(compgen -W \"$words\" -- \"$cur\"))\n  case \"$cur\" in -*) ;; *) COMPREPLY+=($(compgen -f -- \"$cur\")) ;; esac\n}\ncomplete -o filenames -F _matchmark matchmark\n",
		strings.Join(commandNames(), " "))
}

func zshCompletion(w io.Writer, s streams) {
	fmt.Fprint(w, "#compdef matchmark\n_matchmark() {\n  local -a commands\n  commands=(\n")
	for _, c := range commands() {
		fmt.Fprintf(w, "    '%s:%s'\n", c.name, zshText(c.does))
	}
	fmt.Fprint(w, "  )\n  if (( CURRENT == 2 )); then\n    _describe command commands\n    return\n  fi\n  case $words[2] in\n")
	for _, c := range commands() {
		fmt.Fprintf(w, "    %s) _arguments", c.name)
		c.flagSet(s).VisitAll(func(f *pflag.Flag) {
			kind, does := pflag.UnquoteUsage(f)
			value := ""
			if kind != "" {
				value = ":" + strings.ToLower(kind) + ":_files"
			}
			fmt.Fprintf(w, " '--%s[%s]%s'", f.Name, zshText(does), value)
		})
		if v := c.values(); v != nil {
			fmt.Fprintf(w, " '*:word:(%s)' ;;\n", strings.Join(v, " "))
			continue
		}
		fmt.Fprint(w, " '*:file:_files' ;;\n")
	}
	fmt.Fprint(w, "  esac\n}\ncompdef _matchmark matchmark\n")
}

// zshText is a text between single quotes, inside brackets.
func zshText(s string) string {
	return strings.NewReplacer("'", `'\''`, "[", `\[`, "]", `\]`, ":", `\:`).Replace(s)
}

func fishCompletion(w io.Writer, s streams) {
	for _, c := range commands() {
		fmt.Fprintf(w, "complete -c matchmark -n __fish_use_subcommand -a %s -d '%s'\n", c.name, fishText(c.does))
		c.flagSet(s).VisitAll(func(f *pflag.Flag) {
			kind, does := pflag.UnquoteUsage(f)
			takes := ""
			if kind != "" {
				takes = " -r"
			}
			fmt.Fprintf(w, "complete -c matchmark -n '__fish_seen_subcommand_from %s' -l %s%s -d '%s'\n", c.name, f.Name, takes, fishText(does))
		})
		for _, v := range c.values() {
			fmt.Fprintf(w, "complete -c matchmark -n '__fish_seen_subcommand_from %s' -a %s\n", c.name, v)
		}
	}
}

func fishText(s string) string { return strings.NewReplacer(`\`, `\\`, "'", `\'`).Replace(s) }

func powershellCompletion(w io.Writer, s streams) {
	fmt.Fprint(w, "Register-ArgumentCompleter -Native -CommandName matchmark -ScriptBlock {\n  param($word, $ast, $at)\n  $words = @{\n")
	for _, c := range commands() {
		fmt.Fprintf(w, "    '%s' = '%s'\n", c.name, strings.Join(append(c.flagNames(s), c.values()...), " "))
	}
	fmt.Fprintf(w, "  }\n  $typed = $ast.CommandElements | ForEach-Object { $_.ToString() }\n  $offer = '%s help --version'\n  if ($typed.Count -gt 2 -or ($typed.Count -eq 2 -and $word -eq '')) { $offer = $words[$typed[1]] }\n", strings.Join(commandNames(), " "))
	fmt.Fprint(w, "  $offer -split ' ' | Where-Object { $_ -like \"$word*\" } | ForEach-Object { [System.Management.Automation.CompletionResult]::new($_) }\n}\n")
}
