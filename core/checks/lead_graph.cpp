#include "core/checks/lead_graph.h"

#include <algorithm>

namespace pumpwright {

LeadGraph::LeadGraph(const Circuit& circuit, const Nets& nets, const FeaturesOf& features,
                     const std::vector<Branch>& branches)
    : m_nets(nets), m_branches(branches) {
    for (const auto& [end, net] : nets.netOf) {
        m_numbers.emplace_hint(m_numbers.end(), end, m_ends.size());
        m_ends.push_back(&end);
        m_netOfEnd.push_back(net);
    }
    m_edges.resize(m_ends.size());
    for (const auto& [id, wire] : circuit.wires) {
        const auto from = numberOf(wire.from);
        const auto to = numberOf(wire.to);
        if (from && to) {
            join(*from, *to, &id);
        }
    }
    std::optional<std::size_t> body;
    for (std::size_t i = 0; i < m_ends.size(); ++i) {
        if (features.at(m_ends[i]->part).ground) {
            if (body) {
                join(*body, i, nullptr);
            }
            body = body.value_or(i);
        }
    }
    for (std::size_t i = 0; i < branches.size(); ++i) {
        const std::size_t from = *numberOf(branches[i].fromEnd());
        const std::size_t to = *numberOf(branches[i].toEnd());
        m_edges[from].push_back({to, i, nullptr});
        if (!branches[i].oneWay) {
            m_edges[to].push_back({from, i, nullptr});
        }
    }
}

void LeadGraph::join(std::size_t a, std::size_t b, const WireId* wire) {
    m_edges[a].push_back({b, std::nullopt, wire});
    m_edges[b].push_back({a, std::nullopt, wire});
}

std::optional<std::size_t> LeadGraph::numberOf(const End& end) const {
    const auto found = m_numbers.find(end);
    return found == m_numbers.end() ? std::nullopt : std::optional(found->second);
}

LeadStep LeadGraph::stepOf(const Edge& edge) const {
    return {edge.wire == nullptr ? std::nullopt : std::optional(*edge.wire), edge.branch, *m_ends[edge.to]};
}

std::vector<std::size_t> LeadGraph::spread(std::size_t start, std::optional<std::size_t> goal,
                                           std::optional<std::size_t> avoidNet, const MayPass& mayPass,
                                           std::vector<Arrival>& arrivals) const {
    arrivals.assign(m_ends.size(), {});
    arrivals[start].reached = true;
    std::vector<std::size_t> order{start};
    for (std::size_t next = 0; next < order.size() && !(goal && arrivals[*goal].reached); ++next) {
        for (const Edge& edge : m_edges[order[next]]) {
            const bool barred = (avoidNet && m_netOfEnd[edge.to] == *avoidNet) ||
                                (edge.branch && !mayPass(m_branches[*edge.branch]));
            if (!arrivals[edge.to].reached && !barred) {
                arrivals[edge.to] = {true, order[next], &edge};
                order.push_back(edge.to);
            }
        }
    }
    return order;
}

std::optional<std::vector<LeadStep>> LeadGraph::way(const End& from, const End& to,
                                                    std::optional<std::size_t> avoidNet,
                                                    const MayPass& mayPass) const {
    const auto start = numberOf(from);
    const auto goal = numberOf(to);
    if (!start || !goal) {
        return std::nullopt;
    }
    std::vector<Arrival> arrivals;
    spread(*start, goal, avoidNet, mayPass, arrivals);
    if (!arrivals[*goal].reached) {
        return std::nullopt;
    }
    std::vector<LeadStep> steps;
    for (std::size_t at = *goal; at != *start; at = arrivals[at].from) {
        steps.push_back(stepOf(*arrivals[at].by));
    }
    std::reverse(steps.begin(), steps.end());
    return steps;
}

std::vector<LeadStep> LeadGraph::reach(const End& from, std::optional<std::size_t> avoidNet,
                                       const MayPass& mayPass) const {
    const auto start = numberOf(from);
    if (!start) {
        return {};
    }
    std::vector<Arrival> arrivals;
    const std::vector<std::size_t> order = spread(*start, std::nullopt, avoidNet, mayPass, arrivals);
    std::vector<LeadStep> steps;
    for (std::size_t i = 1; i < order.size(); ++i) {
        steps.push_back(stepOf(*arrivals[order[i]].by));
    }
    return steps;
}

} // namespace pumpwright
