#include "core/files/nearest_word.h"

#include <algorithm>
#include <cstddef>
#include <numeric>

namespace pumpwright {
namespace {

/// Edit distance by dynamic programming, one row kept.
std::size_t distance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> row(b.size() + 1);
    std::iota(row.begin(), row.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        std::size_t diagonal = row[0];
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t changed = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
            diagonal = row[j];
            row[j] = std::min({changed, row[j] + 1, row[j - 1] + 1});
        }
    }
    return row[b.size()];
}

} // namespace

std::string_view nearestWord(std::string_view word, const std::vector<std::string_view>& words) {
    constexpr std::size_t kLongest = 64; // longer ones are no misspelling of ours
    std::string_view nearest;
    std::size_t fewest = std::max<std::size_t>(word.size() / 3, 1) + 1;
    for (const std::string_view candidate : words) {
        if (word.size() > kLongest) {
            break;
        }
        const std::size_t different = distance(word, candidate);
        if (different < fewest) {
            fewest = different;
            nearest = candidate;
        }
    }
    return nearest;
}

} // namespace pumpwright
