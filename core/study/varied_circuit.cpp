#include "core/study/varied_circuit.h"

#include "core/parts/part_kind.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string_view>

namespace pumpwright {
namespace {

/// Mixes all bits of a number into each other. The constants are those of SplitMix64 (Steele, Lea and Flood,
/// "Fast splittable pseudorandom number generators", 2014, values from memory).
std::uint64_t mixed(std::uint64_t bits) {
    bits += 0x9e3779b97f4a7c15U;
    bits = (bits ^ (bits >> 30U)) * 0xbf58476d1ce4e5b9U;
    bits = (bits ^ (bits >> 27U)) * 0x94d049bb133111ebU;
    return bits ^ (bits >> 31U);
}

/// A number for a name, the same on every machine.
std::uint64_t numberOf(std::string_view name) {
    std::uint64_t number = name.size();
    for (const char c : name) {
        number = mixed(number ^ static_cast<unsigned char>(c));
    }
    return number;
}

/// Even over 0…1, ends excluded.
double even(std::uint64_t bits) {
    constexpr unsigned kSpareBits = 64 - 53;
    return (static_cast<double>(bits >> kSpareBits) + 0.5) * 0x1p-53;
}

} // namespace

double drawnValue(double nominal, const Tolerance& tolerance, double first, double second) {
    switch (tolerance.sort) {
    case ToleranceSort::Uniform:
        return nominal * (1 + tolerance.share * (2 * first - 1));
    case ToleranceSort::Normal: { // Box and Muller's transform of two even draws
        const double deviate = std::sqrt(-2 * std::log(first)) * std::cos(2 * std::numbers::pi * second);
        return nominal * (1 + tolerance.share / 2 * deviate);
    }
    case ToleranceSort::Limits:
        break;
    }
    return nominal * (1 + (first < 0.5 ? -tolerance.share : tolerance.share));
}

std::vector<VariedValue> variedValues(const Circuit& circuit) {
    std::vector<VariedValue> varied;
    for (const Adjustable& what : adjustables(circuit)) {
        if (what.subject != Subject::Part) {
            continue;
        }
        const Part& part = circuit.parts.at(PartId{what.id});
        const Tolerance tolerance = kindOf(part).tolerance(part, what.spec->key);
        if (tolerance.share > 0) {
            varied.push_back({what, valueOf(circuit, what), tolerance});
        }
    }
    return varied;
}

double drawnValue(const VariedValue& value, std::uint64_t seed, std::uint64_t car) {
    const std::uint64_t carBits = mixed(mixed(seed) + car);
    const std::uint64_t bits =
        mixed(carBits ^ mixed(numberOf(value.what.id) + numberOf(value.what.spec->key)));
    const double drawn = drawnValue(value.nominal, value.tolerance, even(bits), even(mixed(bits)));
    return std::clamp(drawn, value.what.spec->low, value.what.spec->high);
}

Circuit variedCircuit(Circuit circuit, const std::vector<VariedValue>& values, std::uint64_t seed,
                      std::uint64_t car) {
    for (const VariedValue& value : values) {
        Part& part = circuit.parts.at(PartId{value.what.id});
        part.values[std::string(value.what.spec->key)] = drawnValue(value, seed, car);
    }
    return circuit;
}

Circuit variedCircuit(const Circuit& circuit, std::uint64_t seed, std::uint64_t car) {
    return variedCircuit(circuit, variedValues(circuit), seed, car);
}

} // namespace pumpwright
