package hornbook.cli.shell;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * One script that completes the command line in bash and in zsh: it leaves nothing behind but the
 * function {@code _hornbook}. All it knows of the program is in it, so that a key pressed starts
 * nothing.
 */
public final class CompletionScript {
  private static final String HEAD =
      """
      #compdef hornbook
      # Completes hornbook in bash and in zsh.
      _hornbook() {
        [[ -z ${ZSH_VERSION-} ]] || emulate -L zsh
        local cur='' option='' glued='' word='' pair='' skip='' last='' path='' kind='' count=0 at=0
        local -a before commands flags values operands candidates
        if [[ -n ${ZSH_VERSION-} ]]; then
          cur=${words[CURRENT]}
          before=("${words[@]:1:$((CURRENT - 2))}")
        else
          cur=${COMP_WORDS[COMP_CWORD]}
          before=("${COMP_WORDS[@]:1:$((COMP_CWORD - 1))}")
          last=${COMP_WORDS[COMP_CWORD - 1]}
          if [[ $cur == '=' ]]; then
            option=$last cur=''
          elif [[ $last == '=' ]]; then
            option=${COMP_WORDS[COMP_CWORD - 2]}
          fi
        fi
        if [[ -z $option && $cur == --*=* ]]; then
          option=${cur%%=*} glued=${cur%%=*}= cur=${cur#*=}
        fi
      """;

  /** Goes through what stands before: commands, options with their values, operands. */
  private static final String WALK =
      """
        last=''
        for word in "${before[@]}"; do
          if [[ $word == '=' ]]; then
            skip=yes
          elif [[ -n $skip ]]; then
            skip='' last=''
          elif [[ $word == -* && $word != - ]]; then
            for pair in "${values[@]}"; do
              if [[ ${pair%%=*} == "$word" ]]; then
                skip=yes last=$word
              fi
            done
          else
            case "$path $word" in
      """;

  private static final String KIND =
      """
              *) count=$((count + 1)) ;;
            esac
          fi
        done
        if [[ -z $option && -n $skip ]]; then
          option=$last
        fi
        if [[ -n $option ]]; then
          for pair in "${values[@]}"; do
            if [[ ${pair%%=*} == "$option" ]]; then
              kind=${pair#*=}
            fi
          done
        elif [[ $cur == -* ]]; then
          candidates=("${flags[@]}")
          for pair in "${values[@]}"; do
            candidates+=("${pair%%=*}")
          done
        elif [[ ${#commands[@]} -gt 0 ]]; then
          candidates=("${commands[@]}")
        else
          for pair in "${operands[@]}"; do
            if [[ $at == "$count" || $pair == *+ ]]; then
              kind=${pair%+}
            fi
            at=$((at + 1))
          done
        fi
        case $kind in
      """;

  private static final String END =
      """
        esac
        if [[ -n ${ZSH_VERSION-} ]]; then
          [[ -z $glued ]] || compset -P '*='
          (( ${#candidates[@]} == 0 )) || compadd -- "${candidates[@]}"
          case $kind in
            file | case_or_file) _files ;;
            folder) _files -/ ;;
          esac
          return
        fi
        COMPREPLY=()
        local IFS=$' \\t\\n'
        if [[ ${#candidates[@]} -gt 0 ]]; then
          COMPREPLY=($(compgen -W "${candidates[*]}" -- "$cur"))
        fi
        IFS=$'\\n'
        case $kind in
          file | case_or_file)
            COMPREPLY+=($(compgen -f -- "$cur"))
            compopt -o filenames 2>/dev/null
            ;;
          folder)
            COMPREPLY+=($(compgen -d -- "$cur"))
            compopt -o filenames 2>/dev/null
            ;;
        esac
        if [[ -n $glued && ${#COMPREPLY[@]} -gt 0 ]]; then
          COMPREPLY=("${COMPREPLY[@]/#/$glued}")
        fi
      }
      if [[ -z ${ZSH_VERSION-} ]]; then
        complete -F _hornbook hornbook
      elif [[ ${funcstack[1]-} == _hornbook ]]; then
        _hornbook "$@"
      else
        if ! whence compdef >/dev/null; then
          autoload -Uz compinit && compinit
        fi
        compdef _hornbook hornbook
      fi
      """;

  private final CompletionWords words;
  private final Map<List<String>, String> choices = new LinkedHashMap<>();
  private final StringBuilder script = new StringBuilder(HEAD);

  private CompletionScript(CompletionWords words) {
    this.words = words;
  }

  public static String of(CommandLine program, CompletionWords words) {
    return new CompletionScript(words).written(program);
  }

  private String written(CommandLine program) {
    sets(program.getCommandSpec(), "", "  ");
    script.append(WALK);
    below(program, "");
    script.append(KIND);
    words.all().forEach(this::candidates);
    choices.forEach((some, name) -> candidates(name, some));
    return script.append(END).toString();
  }

  private void candidates(String kind, List<String> some) {
    script.append("    ").append(kind).append(") ").append(array("candidates", some));
    script.append(" ;;\n");
  }

  private void below(CommandLine above, String path) {
    above
        .getSubcommands()
        .forEach(
            (name, command) -> {
              script.append("        ' ").append((path + " " + name).strip()).append("')\n");
              String own = (path + " " + name).strip();
              script.append("          path=' ").append(own).append("' count=0\n");
              sets(command.getCommandSpec(), own, "          ");
              script.append("          ;;\n");
              below(command, own);
            });
  }

  /** What a command takes: its commands, its options without and with a value, its operands. */
  private void sets(CommandSpec command, String path, String indent) {
    List<String> flags = new ArrayList<>();
    List<String> values = new ArrayList<>();
    for (OptionSpec option : command.options()) {
      for (String name : option.names()) {
        if (option.arity().max() == 0) {
          flags.add(name);
        } else {
          values.add(name + "=" + kind(path, option));
        }
      }
    }
    List<String> operands = new ArrayList<>();
    for (PositionalParamSpec operand : command.positionalParameters()) {
      operands.add(kind(path, operand) + (operand.arity().max() > 1 ? "+" : ""));
    }
    List<String> commands = new ArrayList<>(command.subcommands().keySet());
    if (path.equals("help")) {
      commands.addAll(command.parent().subcommands().keySet());
    }
    script.append(indent).append(array("commands", commands)).append('\n');
    script.append(indent).append(array("flags", flags)).append('\n');
    script.append(indent).append(array("values", values)).append('\n');
    script.append(indent).append(array("operands", operands)).append('\n');
  }

  private String kind(String path, ArgSpec argument) {
    if (argument.completionCandidates() == null) {
      return CompletionWords.kind(path, argument.paramLabel());
    }
    List<String> some = new ArrayList<>();
    argument.completionCandidates().forEach(some::add);
    return choices.computeIfAbsent(some, any -> "choice" + (choices.size() + 1));
  }

  private static String array(String name, List<String> some) {
    StringBuilder array = new StringBuilder(name).append("=(");
    for (String one : some) {
      array.append(array.charAt(array.length() - 1) == '(' ? "'" : " '").append(one).append('\'');
    }
    return array.append(')').toString();
  }
}
