#pragma once

#include "core/checks/survey.h"

#include <optional>
#include <vector>

namespace pumpwright {

/// How a capacitor is charged at first: over which way, and with what current.
struct CapacitorCharge {
    PartId capacitor;
    std::vector<LeadStep> feed;        ///< from the source's plus to the capacitor's
    std::vector<std::size_t> contacts; ///< on that way and the way back, by number of their branch
    double supply_V = 0;
    double resistance_ohm = 0; ///< all around: source, wires, fuses, contacts, resistors, the capacitor's own
    double peak_A = 0;         ///< supply over resistance
    double inrush_A = 0;       ///< as a mean over the first 50 µs, which can melt metal
};

/// Of every capacitor that a supply feeds.
std::vector<CapacitorCharge> capacitorCharges(const Survey& survey);

/// The charge that is too much for the making rating of this contact, if one is.
const CapacitorCharge* chargeBeyondRating(const Survey& survey, const std::vector<CapacitorCharge>& charges,
                                          std::size_t contact);

} // namespace pumpwright
