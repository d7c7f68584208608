#pragma once

#include "core/circuit/circuit.h"
#include "core/units/quantity_kind.h"
#include "core/units/text.h"

#include <optional>
#include <string>
#include <vector>

namespace pumpwright {

/// After ANSI Z535.6, worst first.
enum class SignalWord { Danger, Warning, Caution, Notice };

std::string_view signalWordName(SignalWord word); ///< "DANGER"

/// What would put the finding right; with an edit where the program can do it.
struct Remedy {
    Text text;
    std::optional<Edit> edit;
};

/// A thing that a rule has found in a circuit.
struct Finding {
    std::string rule;  ///< rule id
    std::string title; ///< the rule's name in plain words
    SignalWord word = SignalWord::Caution;
    std::vector<PartId> parts;
    std::vector<WireId> wires;
    std::vector<HoseId> hoses;
    Text what; ///< one sentence with references and numbers: "K1 is switched off without suppression: …"
    double value = 0; ///< found [SI]
    double limit = 0; ///< [SI]
    QuantityKind kind = QuantityKind::Number;
    std::string source; ///< of the limit: standard and clause, or "common practice, no published source"
    Text why;           ///< one sentence
    std::vector<Remedy> remedies; ///< at least one
    std::optional<double> at_s;   ///< when in the drive it showed
    std::optional<Waiver> waiver; ///< it was accepted, with a reason

    /// Ids of parts, wires and hoses, sorted: what a waiver refers to.
    std::vector<std::string> subjects() const;
};

} // namespace pumpwright
