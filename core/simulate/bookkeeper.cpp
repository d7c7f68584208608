#include "core/simulate/bookkeeper.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pumpwright {
namespace {

/// Nodes and weights of the quadrature of the three-stage Radau IIA method [HairerWanner-II, IV.5].
struct Quadrature {
    double node;
    double weight;
};
const double kRoot6 = std::sqrt(6.0);
const std::array<Quadrature, 3> kQuadrature{
    {{(4 - kRoot6) / 10, (16 - kRoot6) / 36}, {(4 + kRoot6) / 10, (16 + kRoot6) / 36}, {1, 1.0 / 9}}};

/// Less than this is nothing, so that a run in which nothing moves is not judged by its rounding.
constexpr double kNothing_J = 0.01;
constexpr double kNothing_kg = 1e-9;
constexpr double kNothing_C = 1e-3;

void addTimes(double factor, const Account& account, Account& sum) {
    sum.energyIn_W += factor * account.energyIn_W;
    sum.energyOut_W += factor * account.energyOut_W;
    sum.gasIn_kgps += factor * account.gasIn_kgps;
    sum.gasOut_kgps += factor * account.gasOut_kgps;
    sum.delivered_A += factor * account.delivered_A;
}

Balance balance(double in, double out, double held, double heldAtFirst, double nothing) {
    const double size = std::max(in, out) + std::abs(heldAtFirst) + nothing;
    return {in, out, held, std::abs(in - out - held) / size};
}

} // namespace

Bookkeeper::Bookkeeper(const DriveSystem& system, bool full)
    : m_system(system), m_full(full), m_x(system.start().begin(), system.start().end()), m_f(m_x.size()) {
    for (std::size_t i = 0; i < system.laws().size(); ++i) {
        const PlacedLaw& placed = system.laws()[i];
        Account account;
        placed.law->addAccount(system.pointFor(placed, 0, m_x), account);
        if (full || account.held_kg > 0 || account.delivered_A > 0 || placed.subject == Subject::Hose) {
            m_laws.push_back(i);
        }
    }
}

Account Bookkeeper::accountAt(double time_s, std::span<const double> x) const {
    Account account;
    for (const std::size_t i : m_laws) {
        const PlacedLaw& placed = m_system.laws()[i];
        placed.law->addAccount(m_system.pointFor(placed, time_s, x), account);
    }
    if (m_full) {
        account.giveOff(m_system.leakingPower_W(x));
    }
    return account;
}

void Bookkeeper::open(double time_s, std::span<const double> x) {
    m_first = accountAt(time_s, x);
    m_sum = {{}, m_first.held_J, m_first.held_kg, std::vector<double>(m_system.nodes().size())};
}

void Bookkeeper::weigh(const StepPolynomial& step, double to_s) {
    const double span_s = to_s - step.begin_s;
    m_pending.flows = {};
    for (const Quadrature& stage : kQuadrature) {
        const double time_s = step.begin_s + stage.node * span_s;
        step.evaluate(time_s, m_x);
        const Account account = accountAt(time_s, m_x);
        addTimes(stage.weight * span_s, account, m_pending.flows);
        m_pending.held_J = account.held_J; // after the last stage: at the end
        m_pending.held_kg = account.held_kg;
    }
    m_system.rightSide(to_s, m_x, m_f);
    m_pending.missing_C.clear();
    for (const Unknown node : m_system.nodes()) {
        m_pending.missing_C.push_back(span_s * m_f[static_cast<std::size_t>(node)]);
    }
}

double Bookkeeper::offShare() const {
    const double gained_kg = m_pending.held_kg - m_sum.held_kg;
    const double net_kg = m_pending.flows.gasIn_kgps - m_pending.flows.gasOut_kgps;
    double missing_C = 0;
    for (const double at_C : m_pending.missing_C) {
        missing_C += std::abs(at_C);
    }
    return std::max(std::abs(gained_kg - net_kg) / (m_first.held_kg + kNothing_kg),
                    missing_C / (m_sum.flows.delivered_A + m_pending.flows.delivered_A + kNothing_C));
}

void Bookkeeper::enter() {
    addTimes(1, m_pending.flows, m_sum.flows);
    m_sum.held_J = m_pending.held_J;
    m_sum.held_kg = m_pending.held_kg;
    for (std::size_t i = 0; i < m_pending.missing_C.size(); ++i) {
        m_sum.missing_C[i] += m_pending.missing_C[i];
    }
}

Balances Bookkeeper::balances() const {
    const Account& flows = m_sum.flows;
    double missing_C = 0;
    for (const double at_C : m_sum.missing_C) {
        missing_C += std::abs(at_C);
    }
    return {balance(flows.energyIn_W, flows.energyOut_W, m_sum.held_J - m_first.held_J, m_first.held_J,
                    kNothing_J),
            balance(flows.gasIn_kgps, flows.gasOut_kgps, m_sum.held_kg - m_first.held_kg, m_first.held_kg,
                    kNothing_kg),
            balance(flows.delivered_A, flows.delivered_A - missing_C, 0, 0, kNothing_C)};
}

} // namespace pumpwright
