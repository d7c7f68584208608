// What hostile files cost in memory: each is read in a child process that may take 300 MiB more than it has.

#include "core/files/circuit_file.h"
#include "core/files/json_scan.h"
#include "tests/support/catch.h"

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>

using namespace pumpwright;

#ifndef __has_feature
#define __has_feature(feature) 0
#endif
#if !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__) && !__has_feature(address_sanitizer)

namespace {

constexpr rlim_t kMost = rlim_t{300} << 20U;

std::string repeated(const std::string& piece, std::size_t bytes) {
    std::string text;
    text.reserve(bytes);
    while (text.size() + piece.size() <= bytes) {
        text += piece;
    }
    return text;
}

rlim_t ownSize() {
    std::ifstream sizes("/proc/self/statm");
    rlim_t pages = 0;
    sizes >> pages;
    return pages * static_cast<rlim_t>(::sysconf(_SC_PAGESIZE));
}

/// Whether the text can be looked at, and refused or not, within the memory.
bool fits(const std::string& text) {
    const pid_t child = ::fork();
    if (child == 0) {
        const rlim_t most = ownSize() + kMost;
        const struct rlimit limit { most, most };
        if (::setrlimit(RLIMIT_AS, &limit) != 0) {
            ::_exit(2);
        }
        try {
            const auto read = parseCircuit(text);
            ::_exit(read || !read.error().text.empty() ? 0 : 1);
        } catch (const std::exception&) {
            ::_exit(3);
        }
    }
    int status = -1;
    return ::waitpid(child, &status, 0) == child && WIFEXITED(status) && WEXITSTATUS(status) == 0;
}

} // namespace

TEST_CASE("no file of 8 MiB takes more than 300 MiB to be read or refused", "[files][bad-file]") {
    const std::string begin = R"({"pumpwright": 1, "later": [)";
    const std::size_t room = JsonLimits{}.fileBytes - 100;
    for (const std::string piece : {"0,", "[],", "{\"a\":0},", "{},", "\"\",", "[[[["}) {
        CAPTURE(piece);
        // As many as a list may have, in lists as many as fit, so that the limits let most of it through.
        std::string some = "[" + repeated(piece, piece.size() * 1000);
        some.back() = ']';
        CHECK(fits(begin + repeated(some + ",", room / 1000 > some.size() ? some.size() * 1000 : room) +
                   "0]}"));
        CHECK(fits("[" + repeated(piece, room)));
    }
}

#endif
