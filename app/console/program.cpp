#include "app/console/program.h"

#include <cstdio>
#include <exception>

namespace pumpwright {

int print(const Outcome& outcome) {
    std::fwrite(outcome.out.data(), 1, outcome.out.size(), stdout);
    std::fwrite(outcome.err.data(), 1, outcome.err.size(), stderr);
    return static_cast<int>(outcome.status);
}

int guarded(int (*main)(int, char**), int argc, char** argv) {
    constexpr int kFailedItself = 4;
    try {
        return main(argc, argv);
    } catch (const std::exception& exception) {
        std::fputs("pumpwright: the program failed and is sorry: ", stderr);
        std::fputs(exception.what(), stderr);
        std::fputs("\n", stderr);
        return kFailedItself;
    }
}

} // namespace pumpwright
