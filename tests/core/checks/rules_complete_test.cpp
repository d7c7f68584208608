#include "core/checks/rule.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <string>

using namespace pumpwright;

// ctest starts the tests in the root of the sources.

namespace {

using Ids = std::set<std::string>;

std::string textOf(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::string idOf(std::string stem) {
    std::replace(stem.begin(), stem.end(), '_', '-');
    return stem;
}

Ids listedIds() {
    Ids ids;
    for (const Rule* rule : rules()) {
        ids.insert(std::string(rule->id));
    }
    return ids;
}

/// Files that define a rule, by the id that the file's name gives.
Ids ruleFiles() {
    Ids ids;
    for (const auto& entry : std::filesystem::directory_iterator("core/checks")) {
        if (entry.path().extension() == ".cpp" &&
            std::regex_search(textOf(entry.path()), std::regex(R"(extern const Rule k\w+\{)"))) {
            ids.insert(idOf(entry.path().stem().string()));
        }
    }
    return ids;
}

Ids pages() {
    Ids ids;
    for (const auto& entry : std::filesystem::directory_iterator("docs/checks")) {
        ids.insert(entry.path().stem().string());
    }
    return ids;
}

/// The tags of every test case of a rule, one after the other.
std::string tagsOfTests(const std::string& id) {
    std::string stem = id;
    std::replace(stem.begin(), stem.end(), '-', '_');
    const std::string text = textOf("tests/core/checks/" + stem + "_test.cpp");
    const std::regex testCase(R"re(TEST_CASE\("[^"]+",\s*"(\[[^"]+\])"\))re");
    std::string tags;
    for (auto found = std::sregex_iterator(text.begin(), text.end(), testCase);
         found != std::sregex_iterator(); ++found) {
        const std::string own = (*found)[1];
        tags += own.find("[" + id + "]") == std::string::npos ? "" : own;
    }
    return tags;
}

} // namespace

TEST_CASE("every rule is listed once, in a file of its name", "[checks][rules]") {
    CHECK(listedIds().size() == rules().size());
    CHECK(ruleFiles() == listedIds());
}

TEST_CASE("every rule has its page and no page is without a rule", "[checks][rules]") {
    CHECK(pages() == listedIds());
}

TEST_CASE("every rule has a circuit that raises it, a near miss and a test at its limit", "[checks][rules]") {
    for (const std::string& id : listedIds()) {
        INFO(id);
        const std::string tags = tagsOfTests(id);
        for (const char* wanted : {"[raises]", "[near-miss]", "[at-limit]"}) {
            INFO(wanted);
            CHECK(tags.find(wanted) != std::string::npos);
        }
    }
}

TEST_CASE("pages say what is looked at, the limit, examples and remedies", "[checks][rules]") {
    for (const Rule* rule : rules()) {
        INFO(rule->id);
        const std::string page = textOf("docs/checks/" + std::string(rule->id) + ".md");
        CHECK(page.starts_with("# " + std::string(rule->title) + "\n"));
        for (const char* heading :
             {"## What it looks at", "## Limit", "## Fires", "## Stays silent", "## Remedies"}) {
            CHECK(page.find(heading) != std::string::npos);
        }
    }
}

TEST_CASE("every rule states its title, source and check", "[checks][rules]") {
    for (const Rule* rule : rules()) {
        INFO(rule->id);
        CHECK_FALSE(rule->title.empty());
        CHECK_FALSE(rule->source.empty());
        CHECK(rule->check != nullptr);
    }
}
