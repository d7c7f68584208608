#include "core/checks/vacuum_lines.h"

#include <functional>
#include <numeric>

namespace pumpwright {
namespace {

std::size_t rootOf(std::vector<std::size_t>& parents, std::size_t one) {
    while (parents[one] != one) {
        parents[one] = parents[parents[one]];
        one = parents[one];
    }
    return one;
}

std::vector<End> portsWhere(const Survey& survey, const std::function<std::string(const Features&)>& portOf) {
    std::vector<End> ports;
    for (const auto& [id, features] : survey.allFeatures()) {
        const std::string port = portOf(features);
        if (!port.empty()) {
            ports.push_back({id, port});
        }
    }
    return ports;
}

} // namespace

std::map<End, std::size_t> vacuumLines(const Survey& survey) {
    const auto& netOf = survey.nets().vacuumNetOf;
    std::vector<std::size_t> parents(survey.nets().vacuumNets.size());
    std::iota(parents.begin(), parents.end(), std::size_t{0});
    for (const auto& [id, features] : survey.allFeatures()) {
        for (const AirWay& way : features.airWays) {
            if (!way.oneWay) {
                parents[rootOf(parents, netOf.at({id, way.from}))] = rootOf(parents, netOf.at({id, way.to}));
            }
        }
    }
    std::map<End, std::size_t> lines;
    for (const auto& [port, net] : netOf) {
        lines.emplace_hint(lines.end(), port, rootOf(parents, net));
    }
    return lines;
}

std::vector<End> pumpInlets(const Survey& survey) {
    return portsWhere(survey, [](const Features& one) { return one.pump ? one.pump->inlet : std::string(); });
}

std::vector<End> boosterPorts(const Survey& survey) {
    return portsWhere(survey,
                      [](const Features& one) { return one.booster ? one.booster->port : std::string(); });
}

std::vector<End> sensingPorts(const Survey& survey) {
    return portsWhere(survey, [](const Features& one) { return one.sensingPort; });
}

} // namespace pumpwright
