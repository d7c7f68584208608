#include "app/console/command_help.h"
#include "app/console/manual/manual_page.h"

#include <fmt/format.h>

namespace pumpwright {

std::string bashCompletion() {
    std::string words;
    std::string cases;
    for (const CommandHelp& command : commandHelp()) {
        std::string flags;
        for (const OptionHelp& option : command.options) {
            flags += (flags.empty() ? "" : " ") + option.flag;
        }
        words += (words.empty() ? "" : " ") + (command.name.empty() ? flags : command.name);
        if (!command.name.empty()) {
            cases += fmt::format("        {}) words=\"{}\" ;;\n", command.name, flags);
        }
    }
    return fmt::format(R"(# Completion of pumpwright for bash: commands, options, circuit files.
_pumpwright()
{{
    local word=${{COMP_WORDS[COMP_CWORD]}} words="{}"
    if [ "$COMP_CWORD" -gt 1 ]; then
        words=""
        case ${{COMP_WORDS[1]}} in
{}        esac
    fi
    mapfile -t COMPREPLY < <(compgen -W "$words" -- "$word"; compgen -f -X '!*.pumpwright' -- "$word"; compgen -d -- "$word")
}}
complete -o filenames -F _pumpwright pumpwright
)",
                       words, cases);
}

} // namespace pumpwright
