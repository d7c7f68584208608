#include "core/units/wire_size.h"

#include "core/units/constants.h"
#include "core/units/number_text_p.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <charconv>
#include <cmath>
#include <numbers>

namespace pumpwright {
namespace {

constexpr double kSquareMillimetre_m2 = 1e-6;

bool equalsAwg(std::string_view text) {
    return std::ranges::equal(text, std::string_view("AWG"),
                              [](char a, char b) { return a == b || a == static_cast<char>(b - 'A' + 'a'); });
}

std::string_view withoutOuterSpace(std::string_view text) {
    text.remove_prefix(text.starts_with(' ') ? 1 : 0);
    text.remove_suffix(text.ends_with(' ') ? 1 : 0);
    return text;
}

bool isNought(std::string_view text) {
    return text.size() == 3 && text[0] >= '1' && text[0] <= '9' && text.ends_with("/0");
}

} // namespace

double awgDiameter_m(int gauge) {
    return kGauge36Diameter_m * std::pow(kGaugeRatio, (36 - gauge) / kGaugeSteps);
}

double awgArea_m2(int gauge) {
    const double diameter = awgDiameter_m(gauge);
    return std::numbers::pi / 4.0 * diameter * diameter;
}

std::string awgName(int gauge) {
    return gauge <= 0 ? fmt::format("{}/0 AWG", 1 - gauge) : fmt::format("{} AWG", gauge);
}

int nearestAwg(double area_m2) {
    assert(area_m2 > 0.0 && "a wire has an area");
    const double ratio = area_m2 / awgArea_m2(36);
    const double gauge = 36.0 - kGaugeSteps / 2.0 * std::log(ratio) / std::log(kGaugeRatio);
    return static_cast<int>(std::lround(std::clamp(gauge, double{kThickestGauge}, double{kThinnestGauge})));
}

std::optional<int> awgOfArea(double area_m2) {
    if (!(area_m2 > 0.0) || !std::isfinite(area_m2)) {
        return std::nullopt;
    }
    const int gauge = nearestAwg(area_m2);
    const auto digits = [](double area) { return fourDigits(area / kSquareMillimetre_m2); };
    return digits(area_m2) == digits(awgArea_m2(gauge)) ? std::optional(gauge) : std::nullopt;
}

std::string wireSizeName(double area_m2) {
    const auto gauge = awgOfArea(area_m2);
    return gauge ? awgName(*gauge) : fmt::format("{} mm²", fourDigitText(area_m2 / kSquareMillimetre_m2));
}

std::optional<std::string_view> gaugeText(std::string_view text) {
    constexpr std::size_t kWord = 3;
    if (text.size() >= kWord && equalsAwg(text.substr(text.size() - kWord))) {
        return withoutOuterSpace(text.substr(0, text.size() - kWord));
    }
    if (equalsAwg(text.substr(0, kWord))) {
        return withoutOuterSpace(text.substr(kWord));
    }
    return isNought(text) ? std::optional(text) : std::nullopt;
}

std::optional<int> gaugeNumber(std::string_view text) {
    int gauge = 0;
    if (isNought(text)) {
        gauge = 1 - (text[0] - '0');
    } else if (!text.empty() && text.find_first_not_of('0') == std::string_view::npos) {
        gauge = text.size() > 4 ? kThickestGauge - 1 : 1 - static_cast<int>(text.size());
    } else {
        const bool digitsOnly = text.find_first_not_of("0123456789") == std::string_view::npos;
        const auto error = std::from_chars(text.data(), text.data() + text.size(), gauge).ec;
        if (!digitsOnly || error != std::errc()) {
            return std::nullopt;
        }
    }
    return gauge >= kThickestGauge && gauge <= kThinnestGauge ? std::optional(gauge) : std::nullopt;
}

} // namespace pumpwright
