#pragma once

#include <filesystem>
#include <vector>

namespace pumpwright {

// Where the program's own data lies: beside the installed program, or in the folder it was built from. Needs
// no Qt application.

std::filesystem::path resourcesFolder();
std::filesystem::path samplesFolder();
/// Holds handbook/, checks/ and the pages that they point to.
std::filesystem::path docsFolder();

/// The program's catalogue, then the user's own where there is one: catalogue.json in the folder "pumpwright"
/// of $XDG_DATA_HOME, which is ~/.local/share by default.
std::vector<std::filesystem::path> cataloguePaths();

} // namespace pumpwright
