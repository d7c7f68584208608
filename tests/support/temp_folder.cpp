#include "tests/support/temp_folder.h"

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <sstream>
#include <stdexcept>
#include <system_error>

namespace pumpwright {

TempFolder::TempFolder() {
    std::string name = (std::filesystem::temp_directory_path() / "pumpwright-test-XXXXXX").string();
    if (!::mkdtemp(name.data())) {
        throw std::runtime_error("no folder for temporary files");
    }
    m_path = name;
}

TempFolder::~TempFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(m_path, ignored);
}

std::filesystem::path TempFolder::write(std::string_view name, std::string_view text) const {
    const std::filesystem::path path = m_path / name;
    std::ofstream(path, std::ios::binary).write(text.data(), static_cast<std::streamsize>(text.size()));
    return path;
}

std::string TempFolder::read(std::string_view name) const {
    const std::ifstream file(m_path / name, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

bool TempFolder::has(std::string_view name) const {
    return std::filesystem::exists(m_path / name);
}

std::size_t TempFolder::count() const {
    const std::filesystem::directory_iterator begin(m_path);
    return static_cast<std::size_t>(std::distance(begin, std::filesystem::directory_iterator()));
}

} // namespace pumpwright
