#pragma once

#include "core/parts/features.h"

#include <string>
#include <variant>
#include <vector>

namespace pumpwright {

/// No wire of this terminal reaches the part any more; the wires stay joined with each other.
struct OpensTerminal {
    std::string terminal;
};

/// Two terminals are as good as one.
struct JoinsTerminals {
    std::string from;
    std::string to;
};

/// A value of the Nameplate has become another [SI], within the range of its parameter.
struct SetsValue {
    std::string key;
    double value;
};

/// A choice of the Nameplate has become another.
struct SetsChoice {
    std::string key;
    std::string option;
};

using FailureEffect = std::variant<OpensTerminal, JoinsTerminals, SetsValue, SetsChoice>;

/// One way in which a part fails, as the trade speaks of it.
struct Failure {
    std::string id;    ///< kebab-case, unique among the failures of one part: "contact-welded"
    std::string title; ///< for people, after the part's name: "contact stays closed (welded)"
    std::vector<FailureEffect> effects;
};

/// What may fail of what a part shows to the outside: contacts weld or stay open, coils, lamps and motors
/// burn through, fuses blow, diodes and capacitors open or short, pins and grounds lose contact.
std::vector<Failure> failuresFromFeatures(const Features& features);

} // namespace pumpwright
