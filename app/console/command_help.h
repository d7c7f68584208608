#pragma once

#include <string>
#include <vector>

namespace pumpwright {

struct OptionHelp {
    std::string flag;  ///< "--json"
    std::string value; ///< what follows it; empty where nothing does
    std::string text;
};

struct CommandHelp {
    std::string name; ///< empty for the program without a command
    std::string about;
    std::vector<std::string> operands; ///< "FILE"
    std::vector<OptionHelp> options;
};

/// Everything that parseCommandLine() understands, the program itself first. Help, manual page and completion
/// are made from it.
std::vector<CommandHelp> commandHelp();

std::string aboutText();
std::string exitStatusText();

} // namespace pumpwright
