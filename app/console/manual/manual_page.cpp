#include "app/console/manual/manual_page.h"

#include "app/console/command_help.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

/// Text as roff prints it literally: a hyphen that can be copied, no backslash or control line taken as a
/// request.
std::string roff(const std::string& text) {
    std::string out;
    bool atLineStart = true;
    for (const char c : text) {
        if (atLineStart && (c == '.' || c == '\'')) {
            out += "\\&";
        }
        out += c == '-' ? "\\-" : c == '\\' ? "\\e" : std::string(1, c);
        atLineStart = c == '\n';
    }
    return out;
}

std::string synopsis(const CommandHelp& command) {
    std::string line =
        command.name.empty() ? "\\fBpumpwright\\fR" : fmt::format("\\fBpumpwright {}\\fR", command.name);
    for (const std::string& operand : command.operands) {
        const std::string shown = "\\fI" + roff(operand) + "\\fR";
        line += command.name.empty() ? " [" + shown + "]" : " " + shown;
    }
    return line + (command.options.empty() ? "" : " [\\fIoptions\\fR]");
}

std::string optionList(const CommandHelp& command) {
    std::string out;
    for (const OptionHelp& option : command.options) {
        out +=
            fmt::format(".TP\n\\fB{}\\fR{}\n{}\n", roff(option.flag),
                        option.value.empty() ? "" : " \\fI" + roff(option.value) + "\\fR", roff(option.text));
    }
    return out;
}

} // namespace

std::string manualPage() {
    std::string page = ".TH PUMPWRIGHT 1 \"\" \"pumpwright " PUMPWRIGHT_VERSION "\" \"User Commands\"\n"
                       ".SH NAME\npumpwright \\- draw, check and try out the circuit of a brake vacuum pump\n"
                       ".SH SYNOPSIS\n";
    std::string commands;
    for (const CommandHelp& command : commandHelp()) {
        page += synopsis(command) + "\n.br\n";
        commands += command.name.empty() ? optionList(command)
                                         : fmt::format(".SS {}\n{}.\n{}", synopsis(command),
                                                       roff(command.about), optionList(command));
    }
    page += ".SH DESCRIPTION\n" + roff(aboutText()) + "\n.SH OPTIONS\n" + commands;
    page += ".SH EXIT STATUS\n" + roff(exitStatusText()) + "\n";
    page += ".SH FILES\n.TP\n~/.local/share/pumpwright/catalogue.json\n"
            "The user's own parts, beside the catalogue that comes with the program.\n";
    return page;
}

} // namespace pumpwright
