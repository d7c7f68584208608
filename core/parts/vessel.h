#pragma once

#include "core/parts/gas.h"

#include <memory>
#include <utility>

namespace pumpwright {

/// The law of a part that is nothing but one volume of gas: a reservoir, a tee.
class VesselLaw final : public Law {
public:
    explicit VesselLaw(GasVolume volume) : m_volume(std::move(volume)) {}

    void addEquations(const Point& at, Equations& equations) const override {
        m_volume.addEquations(at, equations);
    }
    void addMasses(MassMatrix& masses) const override { m_volume.addMasses(masses); }
    void addAccount(const Point& at, Account& account) const override { m_volume.addAccount(at, account); }

private:
    GasVolume m_volume;
};

} // namespace pumpwright
