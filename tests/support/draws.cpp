#include "tests/support/draws.h"

namespace pumpwright {

int Draws::below(int limit) {
    constexpr int kInOneByte = 256;
    return static_cast<int>(bits(limit <= kInOneByte ? 1 : 4) % static_cast<std::uint64_t>(limit));
}

std::uint64_t Draws::bits(int bytes) {
    if (m_fromSeed) {
        return m_engine() >> static_cast<unsigned>(64 - 8 * bytes);
    }
    std::uint64_t all = 0;
    for (; bytes > 0 && !m_bytes.empty(); --bytes) {
        all = all << 8U | m_bytes.front();
        m_bytes = m_bytes.subspan(1);
    }
    return all;
}

} // namespace pumpwright
