#include "tests/core/source_lines.h"
#include "tests/support/catch.h"

#include <array>
#include <optional>
#include <string_view>

using namespace pumpwright;

namespace {

/// Core's folders: each may include itself and those to the left.
constexpr std::array<std::string_view, 9> kFolders{"units",  "circuit", "parts", "nets", "simulate",
                                                   "checks", "study",   "sheet", "files"};

std::optional<std::size_t> rank(std::string_view folder) {
    const auto found = std::ranges::find(kFolders, folder);
    return found == kFolders.end() ? std::nullopt : std::optional<std::size_t>(found - kFolders.begin());
}

/// What stands between the quotes or angle brackets of an include line, with its opening sign.
std::optional<std::string> included(const std::string& line) {
    constexpr std::string_view kWord = "#include ";
    if (!line.starts_with(kWord) || line.size() < kWord.size() + 3) {
        return std::nullopt;
    }
    const std::size_t end = line.find_first_of("\">", kWord.size() + 1);
    return line.substr(kWord.size(), end - kWord.size());
}

/// "parts" of "core/parts/law.h".
std::string secondFolder(std::string_view path) {
    const std::size_t first = path.find('/');
    const std::size_t second = path.find('/', first + 1);
    return std::string(path.substr(first + 1, second - first - 1));
}

std::string folderOf(const std::string& path) {
    return path.substr(0, path.rfind('/'));
}

struct Include {
    std::string file;
    std::string target; ///< without the opening sign
    bool ours;          ///< in quotes
};

std::vector<Include> includesBelow(const std::string& folder) {
    std::vector<Include> includes;
    for (const SourceFile& file : sourceFiles(folder)) {
        for (const std::string& line : file.lines) {
            if (const auto target = included(line)) {
                includes.push_back({file.path, target->substr(1), target->front() == '"'});
            }
        }
    }
    return includes;
}

} // namespace

TEST_CASE("every folder of core is in the list of layers", "[layout]") {
    for (const SourceFile& file : sourceFiles("core")) {
        INFO(file.path);
        CHECK(rank(secondFolder(file.path)).has_value());
    }
}

TEST_CASE("a folder of core includes only itself and the folders before it", "[layout]") {
    const std::vector<Include> includes = includesBelow("core");
    REQUIRE(includes.size() > 100);
    for (const Include& include : includes) {
        if (!include.ours) {
            continue;
        }
        INFO(include.file << " includes " << include.target);
        REQUIRE(include.target.starts_with("core/"));
        const auto own = rank(secondFolder(include.file));
        const auto other = rank(secondFolder(include.target));
        REQUIRE(own.has_value());
        REQUIRE(other.has_value());
        CHECK(*other <= *own);
    }
}

TEST_CASE("core includes nothing of Qt", "[layout]") {
    for (const Include& include : includesBelow("core")) {
        INFO(include.file << " includes " << include.target);
        const bool qt = !include.ours && (include.target.starts_with("Q") || include.target.starts_with("q"));
        CHECK_FALSE(qt);
    }
}

TEST_CASE("the app includes neither tests nor, in the window, the console", "[layout]") {
    for (const Include& include : includesBelow("app")) {
        INFO(include.file << " includes " << include.target);
        CHECK_FALSE(include.target.starts_with("tests/"));
        if (include.file.starts_with("app/desktop/")) {
            CHECK_FALSE(include.target.starts_with("app/console/"));
        }
    }
}

TEST_CASE("own headers are included by their path from the root", "[layout]") {
    for (const char* folder : {"core", "app", "tests"}) {
        for (const Include& include : includesBelow(folder)) {
            if (!include.ours) {
                continue;
            }
            INFO(include.file << " includes " << include.target);
            const bool fromRoot = include.target.starts_with("core/") || include.target.starts_with("app/") ||
                                  include.target.starts_with("tests/");
            CHECK(fromRoot);
        }
    }
}

TEST_CASE("a header that ends in _p.h is included in its own folder only", "[layout]") {
    for (const char* folder : {"core", "app"}) {
        for (const Include& include : includesBelow(folder)) {
            if (include.ours && include.target.ends_with("_p.h")) {
                INFO(include.file << " includes " << include.target);
                CHECK(folderOf(include.file) == folderOf(include.target));
            }
        }
    }
}

TEST_CASE("the chart library is included by the chart's sources only", "[layout]") {
    for (const Include& include : includesBelow("app")) {
        if (include.target == "qcustomplot.h") {
            INFO(include.file);
            CHECK(include.file.starts_with("app/desktop/chart/"));
            CHECK(include.file.ends_with(".cpp"));
        }
    }
}
