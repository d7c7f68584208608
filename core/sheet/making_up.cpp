#include "core/sheet/making_up.h"

#include "core/parts/part_kind.h"
#include "core/units/quantity_kind.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kSlackShare = 0.05;
constexpr double kForEachEnd_m = 0.05;
constexpr double kHair_m2 = 1e-9; // an area that is a limit on paper may be stored a hair above

/// Conductor areas [mm²] that one barrel takes: insulated barrels after DIN 46237, tubular lugs after DIN
/// 46235 (values from memory of both).
struct Barrel {
    double from_mm2;
    double to_mm2;
};
constexpr std::array kBarrels{Barrel{0.1, 0.4}, Barrel{0.5, 1}, Barrel{1.5, 2.5}, Barrel{4, 6},
                              Barrel{10, 10},   Barrel{16, 16}, Barrel{25, 25},   Barrel{35, 35},
                              Barrel{50, 50},   Barrel{70, 70}, Barrel{95, 95},   Barrel{120, 120}};
constexpr double kLargestSmallBarrel_m2 = 6e-6;

/// Heat-shrink that goes over the barrel for conductors up to an area (common practice, no published source).
struct Sleeve {
    double upTo_m2;
    double bore_m;
};
constexpr std::array kSleeves{Sleeve{1e-6, 4.8e-3},   Sleeve{2.5e-6, 6.4e-3}, Sleeve{6e-6, 9.5e-3},
                              Sleeve{16e-6, 12.7e-3}, Sleeve{35e-6, 19.1e-3}, Sleeve{1, 25.4e-3}};

std::string barrelText(double area_m2) {
    const auto fits = std::ranges::find_if(
        kBarrels, [&](const Barrel& barrel) { return area_m2 <= barrel.to_mm2 * 1e-6 + kHair_m2; });
    if (fits == kBarrels.end()) {
        return "for " + formatQuantity(area_m2, QuantityKind::WireArea, "mm²");
    }
    return fits->from_mm2 < fits->to_mm2 ? fmt::format("for {:g}–{:g} mm²", fits->from_mm2, fits->to_mm2)
                                         : fmt::format("for {:g} mm²", fits->to_mm2);
}

void add(std::vector<Crimp>& crimps, const Circuit& circuit, const End& at,
         const std::vector<WireId>& wires) {
    const Fitting fitting = kindOf(circuit.parts.at(at.part)).features(circuit.parts.at(at.part)).fitting;
    for (const WireId& id : wires) {
        if (crimps.empty() || crimps.back().at != at || fitting == Fitting::Stud) {
            crimps.push_back({at, fitting, 0, {}});
        }
        crimps.back().area_m2 += circuit.wires.at(id).area_m2;
        crimps.back().wires.push_back(id);
    }
}

} // namespace

double cutLength_m(const Wire& wire) {
    constexpr double kHair = 1e-6; // of a centimetre, so that 2.62 m on paper is not cut to 2.63 m
    const double length_m = wire.length_m * (1 + kSlackShare) + 2 * kForEachEnd_m;
    return std::ceil(length_m * 100 - kHair) / 100;
}

std::vector<Crimp> crimpsOf(const Circuit& circuit) {
    std::map<End, std::vector<WireId>> wiresAt;
    for (const auto& [id, wire] : circuit.wires) {
        wiresAt[wire.from].push_back(id);
        wiresAt[wire.to].push_back(id);
    }
    std::vector<Crimp> crimps;
    for (const auto& [at, wires] : wiresAt) {
        add(crimps, circuit, at, wires);
    }
    return crimps;
}

bool isLarge(const Crimp& crimp) {
    return crimp.area_m2 > kLargestSmallBarrel_m2 + kHair_m2;
}

std::string crimpName(const Crimp& crimp) {
    switch (crimp.fitting) {
    case Fitting::Blade:
        return isLarge(crimp) ? "blade 9.5" : "blade 6.3";
    case Fitting::Stud:
        return isLarge(crimp) ? "ring M8" : "ring M6";
    case Fitting::Pin:
        return "plug contact";
    case Fitting::Splice:
        break;
    }
    return "splice";
}

std::string crimpOrder(const Crimp& crimp) {
    return crimpName(crimp) + ", " + barrelText(crimp.area_m2);
}

std::string sleeveOrder(const Crimp& crimp) {
    const auto fits = std::ranges::find_if(
        kSleeves, [&](const Sleeve& sleeve) { return crimp.area_m2 <= sleeve.upTo_m2 + kHair_m2; });
    const double bore_m = fits == kSleeves.end() ? kSleeves.back().bore_m : fits->bore_m;
    return fmt::format("{} before shrinking, {} mm long", formatQuantity(bore_m, QuantityKind::Length, "mm"),
                       crimp.fitting == Fitting::Splice ? 60 : 30);
}

} // namespace pumpwright
