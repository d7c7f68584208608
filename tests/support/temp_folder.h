#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

namespace pumpwright {

/// An empty folder of its own for a test, gone with it.
class TempFolder {
public:
    TempFolder();
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;
    ~TempFolder();

    const std::filesystem::path& path() const { return m_path; }
    std::filesystem::path write(std::string_view name, std::string_view text) const;
    std::string read(std::string_view name) const;
    bool has(std::string_view name) const;
    /// How many files and folders are in it.
    std::size_t count() const;

private:
    std::filesystem::path m_path;
};

} // namespace pumpwright
