#include "app/desktop/data_files.h"

#include <cstdlib>
#include <optional>
#include <system_error>

namespace pumpwright {
namespace {

namespace fs = std::filesystem;

std::optional<fs::path> environmentPath(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr || *value == '\0' ? std::nullopt : std::optional<fs::path>(value);
}

/// "share/pumpwright" under the prefix that the running program, in bin or in libexec, is installed to.
std::optional<fs::path> installedFolder() {
    std::error_code error;
    const fs::path program = fs::read_symlink("/proc/self/exe", error);
    if (error) {
        return std::nullopt;
    }
    const fs::path above = program.parent_path().parent_path();
    for (const fs::path& prefix : {above, above.parent_path()}) {
        const fs::path folder = prefix / "share" / "pumpwright";
        if (fs::is_directory(folder / "resources", error)) {
            return folder;
        }
    }
    return std::nullopt;
}

fs::path dataFolder() {
    return installedFolder().value_or(fs::path(PUMPWRIGHT_SOURCE_DIR));
}

std::optional<fs::path> userDataFolder() {
    if (const auto given = environmentPath("XDG_DATA_HOME")) {
        return *given / "pumpwright";
    }
    const auto home = environmentPath("HOME");
    return home ? std::optional<fs::path>(*home / ".local" / "share" / "pumpwright") : std::nullopt;
}

} // namespace

fs::path resourcesFolder() {
    return dataFolder() / "resources";
}

fs::path samplesFolder() {
    return dataFolder() / "samples";
}

fs::path docsFolder() {
    return dataFolder() / "docs";
}

std::vector<fs::path> cataloguePaths() {
    std::vector<fs::path> paths{resourcesFolder() / "catalogue" / "parts.json"};
    if (const auto user = userDataFolder()) {
        std::error_code error;
        const fs::path own = *user / "catalogue.json";
        if (fs::is_regular_file(own, error)) {
            paths.push_back(own);
        }
    }
    return paths;
}

} // namespace pumpwright
