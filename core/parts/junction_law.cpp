#include "core/parts/junction_law.h"

#include "core/units/text.h"

namespace pumpwright {
namespace {

class JunctionLaw final : public Law {
public:
    JunctionLaw(Unknown anode, Unknown cathode, const JunctionValues& values)
        : m_junction(anode, cathode, values) {}

    void addEquations(const Point& at, Equations& equations) const override {
        m_junction.addEquations(at, equations);
    }
    void addAccount(const Point& at, Account& account) const override { m_junction.addAccount(at, account); }
    std::vector<Probe> probes() const override {
        return {{probe::kCurrent, words("current, anode to cathode"), QuantityKind::Current, false, 1e-4}};
    }
    void probeValues(const Point& at, std::span<double> values) const override {
        values[0] = m_junction.current_A(at);
    }

private:
    JunctionElement m_junction;
};

} // namespace

std::unique_ptr<Law> junctionLaw(Unknown anode, Unknown cathode, const JunctionValues& values) {
    return std::make_unique<JunctionLaw>(anode, cathode, values);
}

} // namespace pumpwright
