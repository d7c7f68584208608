#pragma once

#include "core/circuit/circuit.h"
#include "core/parts/part_kind.h"
#include "tests/support/draws.h"

#include <cstdint>
#include <span>
#include <string>

namespace pumpwright {

/// Makes circuits that a file may hold, of every part kind, with every value inside its range and texts that
/// try to be more than text. Not circuits that make sense: what is joined is left to chance. The same seed,
/// or the same bytes, give the same circuits.
class RandomCircuits {
public:
    explicit RandomCircuits(std::uint64_t seed) : m_draws(seed) {}
    explicit RandomCircuits(std::span<const std::uint8_t> bytes) : m_draws(bytes) {}

    Circuit circuit(int mostParts = 12);
    /// Something that a user could do with the circuit; it stays one that a file may hold.
    Edit edit(const Circuit& circuit);

    int below(int limit) { return m_draws.below(limit); }
    /// Bytes that it was made from have run out.
    bool isExhausted() const { return m_draws.isEmpty(); }
    std::string textOf(std::span<const std::string_view> codes);
    bool chance(int percent) { return below(100) < percent; }
    double valueOf(const ParameterSpec& spec);
    std::string text();

private:
    Part part(int number);
    Wire wire(const Circuit& circuit);
    Hose hose(const Circuit& circuit);
    DrivePlan plan(const Circuit& circuit);
    TitleBlock title();
    ProjectLimits limits();
    Waivers waivers(const Circuit& circuit);
    Trial trial(const Circuit& circuit);
    UnknownKeys unknown();
    GridPoint place() { return {below(200) - 100, below(200) - 100}; }
    template <class Map>
    const typename Map::value_type& oneOf(const Map& map);
    End randomEnd(const Circuit& circuit, bool vacuum);
    void addConnections(Circuit& circuit, int count);

    Draws m_draws;
};

} // namespace pumpwright
