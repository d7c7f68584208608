#include "tests/support/test_seed.h"

#include <charconv>
#include <cstdlib>
#include <string_view>

namespace pumpwright {
namespace {

constexpr std::uint64_t kUsualSeed = 20261125;

} // namespace

std::uint64_t testSeed() {
    std::uint64_t seed = kUsualSeed;
    if (const char* other = std::getenv("PUMPWRIGHT_SEED")) {
        const std::string_view digits(other);
        std::from_chars(digits.data(), digits.data() + digits.size(), seed);
    }
    return seed;
}

} // namespace pumpwright
