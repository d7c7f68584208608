#include "core/parts/law.h"

#include <cassert>

namespace pumpwright {

void MassMatrix::addCapacitance(Unknown a, Unknown b, double capacitance_F) {
    add(a, a, capacitance_F);
    add(b, b, capacitance_F);
    add(a, b, -capacitance_F);
    add(b, a, -capacitance_F);
}

double Law::eventValue(std::size_t, const Point&) const {
    assert(false && "a law with events states their values");
    return -1;
}

std::string Law::happen(std::size_t, const Point&, std::span<double>) const {
    assert(false && "a law with events states what they do");
    return {};
}

} // namespace pumpwright
