#include "app/console/program.h"

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <new>
#include <string>
#include <system_error>

namespace pumpwright {
namespace {

/// Says what the program failed of, without needing memory.
int tellFailure(const std::exception_ptr& failure) {
    try {
        if (failure) {
            std::rethrow_exception(failure);
        }
        std::fputs("pumpwright: the program failed and is sorry.\n", stderr);
    } catch (const std::bad_alloc&) {
        std::fputs("pumpwright: There is not enough memory for this. End other programs, or shorten the "
                   "drive plan.\n",
                   stderr);
    } catch (const std::exception& exception) {
        std::fputs("pumpwright: the program failed and is sorry: ", stderr);
        std::fputs(exception.what(), stderr);
        std::fputs("\n", stderr);
    }
    return static_cast<int>(ExitStatus::FailedItself);
}

/// Libraries say of some functions that they throw nothing, and yet allocate in them.
[[noreturn]] void endAtOnce() {
    std::_Exit(tellFailure(std::current_exception()));
}

} // namespace

int print(const Outcome& outcome) {
    const bool whole = std::fwrite(outcome.out.data(), 1, outcome.out.size(), stdout) == outcome.out.size() &&
                       std::fflush(stdout) == 0;
    const std::string reason = whole ? std::string() : std::generic_category().message(errno);
    std::fwrite(outcome.err.data(), 1, outcome.err.size(), stderr);
    if (!whole) {
        std::fputs(("pumpwright: The output cannot be written: " + reason + ".\n").c_str(), stderr);
        return static_cast<int>(ExitStatus::Unreadable);
    }
    return static_cast<int>(outcome.status);
}

int guarded(int (*main)(int, char**), int argc, char** argv) {
    std::set_terminate(endAtOnce);
    try {
        return main(argc, argv);
    } catch (const std::exception&) {
        return tellFailure(std::current_exception());
    }
}

} // namespace pumpwright
