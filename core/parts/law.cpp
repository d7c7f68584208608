#include "core/parts/law.h"

#include <cassert>

namespace pumpwright {

void Equations::addConductance(const Point& at, Unknown from, Unknown to, double conductance_S) {
    addCurrent(from, to, conductance_S * (at[from] - at[to]));
    addCurrentSlope(from, to, from, conductance_S);
    addCurrentSlope(from, to, to, -conductance_S);
}

void MassMatrix::addCapacitance(Unknown a, Unknown b, double capacitance_F) {
    add(a, a, capacitance_F);
    add(b, b, capacitance_F);
    add(a, b, -capacitance_F);
    add(b, a, -capacitance_F);
}

double Law::eventValue(std::size_t, const Point&) const {
    assert(!"a law with events states their values");
    return -1;
}

std::string Law::happen(std::size_t, const Point&, std::span<double>) const {
    assert(!"a law with events states what they do");
    return {};
}

} // namespace pumpwright
