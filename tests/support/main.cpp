// The main of every test program without a window. It runs under the locale of the environment, as the window
// does, so that a number which goes by way of the locale shows where that has other signs.
#define CATCH_CONFIG_RUNNER
#include "tests/support/catch.h"

#include <clocale>
#include <cstdio>

int main(int argc, char** argv) {
    if (!std::setlocale(LC_ALL, "")) {
        std::fputs("The locale of the environment is not installed; set LC_ALL=C.UTF-8.\n", stderr);
        return 2;
    }
    return Catch::Session().run(argc, argv);
}
