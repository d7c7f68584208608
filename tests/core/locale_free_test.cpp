#include "tests/core/source_lines.h"
#include "tests/support/catch.h"

#include <regex>

using namespace pumpwright;

// Functions of the standard library that read or write numbers as the system's locale has it: "0,5" for 0.5.

namespace {

const std::regex kReading(R"(\b(strto(d|f|ld)|ato(f|i|l)|sto(d|f|ld)|[fs]?scanf)\s*\()");
const std::regex kWriting(R"(\b(v?s?n?f?printf)\s*\(|\{:[^}]*L[^}]*\})");
const std::regex kStreams(R"(#include <(iostream|sstream|iomanip|locale|clocale)>)");

std::string withoutComment(const std::string& line) {
    return line.substr(0, line.find("//"));
}

/// Lines of core and the console that match, as "file:line".
std::vector<std::string> linesWith(const std::regex& pattern) {
    std::vector<std::string> hits;
    for (const char* folder : {"core", "app/console"}) {
        for (const SourceFile& file : sourceFiles(folder)) {
            for (std::size_t i = 0; i < file.lines.size(); ++i) {
                if (std::regex_search(withoutComment(file.lines[i]), pattern)) {
                    hits.push_back(file.path + ":" + std::to_string(i + 1));
                }
            }
        }
    }
    return hits;
}

} // namespace

TEST_CASE("core and console read no number by way of the locale", "[layout][locale]") {
    CHECK(linesWith(kReading) == std::vector<std::string>{});
}

TEST_CASE("core and console write no number by way of the locale", "[layout][locale]") {
    CHECK(linesWith(kWriting) == std::vector<std::string>{});
}

TEST_CASE("core and console use no streams for text", "[layout][locale]") {
    CHECK(linesWith(kStreams) == std::vector<std::string>{});
}

TEST_CASE("the patterns find what they are for", "[layout][locale]") {
    CHECK(std::regex_search("x = std::strtod(text, &end);", kReading));
    CHECK(std::regex_search("x = std::stod (text);", kReading));
    CHECK_FALSE(std::regex_search("parseQuantity(text)", kReading));
    CHECK(std::regex_search("snprintf(buffer, 9, format, x)", kWriting));
    CHECK(std::regex_search("fmt::format(\"{:.2Lf}\", x)", kWriting));
    CHECK_FALSE(std::regex_search("fmt::format(\"{:.2f}\", x)", kWriting));
    CHECK(std::regex_search("#include <sstream>", kStreams));
    CHECK(withoutComment("a; // atof(b)") == "a; ");
}
