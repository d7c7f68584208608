#pragma once

#include "core/parts/features.h"
#include "core/parts/law.h"
#include "core/parts/part_kind.h"

#include <array>
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// A mechanical contact as a piece of a part's law. Whether it is closed is the part's memory and is passed
/// in, so the element itself never changes.
///
/// Closed it is a small resistance. Open it is a gap: a few picofarads, hardly any leakage, and beyond
/// ±gapBreakdown_V a steep clamp that stands for the discharge across the gap. The clamp holds whatever
/// an inductive load drives through it, so voltages stay finite when a coil has no suppression.
class ContactElement {
public:
    ContactElement(Unknown from, Unknown to, double resistance_ohm, double gapBreakdown_V);

    void addEquations(const Point& at, bool closed, Equations& equations) const;
    void addMasses(MassMatrix& masses) const;
    void addAccount(const Point& at, bool closed, Account& account) const;
    /// [A] from `from` to `to`, without the current that charges the gap.
    double current_A(const Point& at, bool closed) const;

private:
    Unknown m_from;
    Unknown m_to;
    double m_conductance_S;
    double m_gapBreakdown_V;
};

/// What the Nameplate of every part with a mechanical contact holds about it. [ohm, A]
struct ContactStandard {
    double resistance_ohm;
    ContactRating rating;
};

inline constexpr std::size_t kContactParameterCount = 8;

/// The parameters of a mechanical contact with a kind's own standard values: contactResistance_ohm,
/// continuous_A, make_A, breakResistive_A, breakInductive_A, minimumLoad_A, ratedOperations, gapBreakdown_V.
/// The lowest breakdown is the Paschen minimum in air, about 327 V (value from memory of physics textbooks).
constexpr std::array<ParameterSpec, kContactParameterCount> contactParameters(const ContactStandard& own) {
    return {{
        {"contactResistance_ohm", "Contact resistance", QuantityKind::Resistance, own.resistance_ohm, 1e-5,
         10},
        {"continuous_A", "Contact: continuous", QuantityKind::Current, own.rating.continuous_A, 1e-3, 1000},
        {"make_A", "Contact: make", QuantityKind::Current, own.rating.make_A, 1e-3, 5000},
        {"breakResistive_A", "Contact: break, resistive", QuantityKind::Current, own.rating.breakResistive_A,
         1e-3, 1000},
        {"breakInductive_A", "Contact: break, inductive", QuantityKind::Current, own.rating.breakInductive_A,
         1e-3, 1000},
        {"minimumLoad_A", "Contact: least current", QuantityKind::Current, own.rating.minimum_A, 0, 100},
        {"ratedOperations", "Contact: electrical life, operations", QuantityKind::Number,
         own.rating.operations, 100, 1e9},
        {"gapBreakdown_V", "Open gap breaks down at", QuantityKind::Voltage, 330, 327, 5000},
    }};
}

/// One list of parameters after the other.
template <std::size_t A, std::size_t B>
constexpr std::array<ParameterSpec, A + B> joined(const std::array<ParameterSpec, A>& first,
                                                  const std::array<ParameterSpec, B>& second) {
    std::array<ParameterSpec, A + B> all{};
    for (std::size_t i = 0; i < A; ++i) {
        all[i] = first[i];
    }
    for (std::size_t i = 0; i < B; ++i) {
        all[A + i] = second[i];
    }
    return all;
}

/// A contact for the features of a part whose kind has contactParameters().
Contact contactFeature(const PartKind& kind, const Part& part, std::string from, std::string to, Operator by);

/// The element and the rating from a part whose kind has contactParameters().
ContactElement contactElement(const PartKind& kind, const Part& part, Unknown from, Unknown to);
ContactRating contactRating(const PartKind& kind, const Part& part);

/// The two probes of a contact: state and current. `name` is empty for the first contact of a part, else its
/// terminals, "30-87a".
std::vector<Probe> contactProbes(std::string_view name = {});

} // namespace pumpwright
