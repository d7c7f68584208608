#pragma once

#include <cstddef>
#include <cstdint>
#include <random>
#include <span>

namespace pumpwright {

/// Where chance comes from: a seed, or the bytes that a fuzzer made up. Bytes that have run out are zeros.
class Draws {
public:
    explicit Draws(std::uint64_t seed) : m_engine(seed), m_fromSeed(true) {}
    /// The bytes must outlive it.
    explicit Draws(std::span<const std::uint8_t> bytes) : m_bytes(bytes) {}

    /// 0 … limit − 1.
    int below(int limit);
    /// 0 … 1, 1 left out; every bit of a double used.
    double share() { return static_cast<double>(bits(7) >> 3U) * 0x1p-53; }
    bool isEmpty() const { return !m_fromSeed && m_bytes.empty(); }

private:
    std::uint64_t bits(int bytes);

    std::mt19937_64 m_engine;
    std::span<const std::uint8_t> m_bytes;
    bool m_fromSeed = false;
};

} // namespace pumpwright
