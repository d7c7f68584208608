#pragma once

#include "core/circuit/circuit.h"
#include "core/parts/features.h"

#include <string>
#include <vector>

namespace pumpwright {

/// What a wire is cut to before its ends are made: the run, 5 % of it for bends and slack, and 50 mm at each
/// end to strip, crimp, and crimp once more; rounded up to whole centimetres. [m] (common practice, no
/// published source)
double cutLength_m(const Wire& wire);

/// What is crimped on where one wire or several reach a terminal: a ring for each wire under a nut, elsewhere
/// one barrel for all of them.
struct Crimp {
    End at;
    Fitting fitting = Fitting::Blade;
    double area_m2 = 0; ///< of all conductors in the barrel
    std::vector<WireId> wires;
};

/// Every crimp of the circuit, in the order of terminals.
std::vector<Crimp> crimpsOf(const Circuit& circuit);

/// More than 6 mm² of conductors: the larger sort of terminals.
bool isLarge(const Crimp& crimp);
/// "ring M6"
std::string crimpName(const Crimp& crimp);
/// "ring M6, for 1.5–2.5 mm²": what a buyer asks for.
std::string crimpOrder(const Crimp& crimp);
/// "6.4 mm before shrinking, 30 mm long": the sleeve over the barrel.
std::string sleeveOrder(const Crimp& crimp);

} // namespace pumpwright
