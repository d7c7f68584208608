#pragma once

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace pumpwright {

/// A C++ file of the project: its path from the root, and its lines.
struct SourceFile {
    std::string path;
    std::vector<std::string> lines;
};

/// All .h and .cpp files below a folder of the project, in order.
inline std::vector<SourceFile> sourceFiles(const std::string& folder) {
    const std::filesystem::path root(PUMPWRIGHT_SOURCE_DIR);
    std::vector<SourceFile> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(root / folder)) {
        const std::string extension = entry.path().extension().string();
        if (extension != ".h" && extension != ".cpp") {
            continue;
        }
        SourceFile file{entry.path().lexically_relative(root).generic_string(), {}};
        std::ifstream stream(entry.path());
        for (std::string line; std::getline(stream, line);) {
            file.lines.push_back(line);
        }
        files.push_back(std::move(file));
    }
    std::ranges::sort(files, {}, &SourceFile::path);
    return files;
}

} // namespace pumpwright
