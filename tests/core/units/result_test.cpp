#include "core/units/result.h"
#include "tests/support/catch.h"

#include <set>
#include <string>

namespace pumpwright {

TEST_CASE("every error code has its own kebab-case name", "[units][result]") {
    std::set<std::string> names;
    const int last = static_cast<int>(ErrorCode::DanglingReference);
    for (int code = 0; code <= last; ++code) {
        const std::string name(errorCodeName(static_cast<ErrorCode>(code)));
        CHECK_FALSE(name.empty());
        CHECK(name.find_first_not_of("abcdefghijklmnopqrstuvwxyz-") == std::string::npos);
        names.insert(name);
    }
    CHECK(names.size() == static_cast<std::size_t>(last) + 1);
}

} // namespace pumpwright
