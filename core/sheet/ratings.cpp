#include "core/sheet/ratings.h"

#include "core/parts/part_kind.h"
#include "core/sheet/references.h"
#include "core/units/quantity_kind.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

using Texts = std::vector<std::string>;

std::string amperes(double current_A) {
    return formatQuantity(current_A, QuantityKind::Current);
}

std::string_view suppressionText(Suppression suppression) {
    switch (suppression) {
    case Suppression::Diode:
        return " with diode";
    case Suppression::Resistor:
        return " with resistor";
    case Suppression::Zener:
        return " with zener";
    case Suppression::None:
        break;
    }
    return "";
}

void addFuse(Texts& texts, const Features& features) {
    if (features.fuse) {
        texts.push_back(fmt::format("{}, {}", amperes(features.fuse->rating_A),
                                    formatQuantity(features.fuse->voltage_V, QuantityKind::Voltage)));
    }
}

void addCoils(Texts& texts, const Features& features) {
    for (const Coil& coil : features.coils) {
        texts.push_back(fmt::format("coil {}{}",
                                    formatQuantity(coil.resistance_ohm, QuantityKind::Resistance),
                                    suppressionText(coil.suppression)));
    }
}

void addContacts(Texts& texts, const Features& features) {
    for (const Contact& contact : features.contacts) {
        if (contact.rating.continuous_A > 0) {
            texts.push_back(fmt::format("{} {}–{} {}", contact.semiconductor ? "output" : "contact",
                                        contact.from, contact.to, amperes(contact.rating.continuous_A)));
        }
    }
}

void addLoads(Texts& texts, const Features& features) {
    for (const Load& load : features.loads) {
        const bool besides = load.sort == LoadSort::Coil || // told as a coil
                             (load.sort == LoadSort::Electronic && !features.contacts.empty());
        if (besides || load.running_A <= 0) {
            continue;
        }
        const bool inrush = load.inrush_A > load.running_A;
        texts.push_back(
            inrush ? fmt::format("runs at {}, starts at {}", amperes(load.running_A), amperes(load.inrush_A))
                   : amperes(load.running_A));
    }
}

void addRectifier(Texts& texts, const Features& features) {
    if (features.rectifier && features.rectifier->continuous_A > 0) {
        texts.push_back(fmt::format("{}, {}", amperes(features.rectifier->continuous_A),
                                    formatQuantity(features.rectifier->reverse_V, QuantityKind::Voltage)));
    }
}

/// "capacity 60 Ah"
std::string namedValue(const Part& part, const PartKind& kind, const ParameterSpec& parameter) {
    return fmt::format("{} {}", lowerFirst(parameter.label),
                       formatQuantity(kind.value(part, parameter.key), parameter.kind));
}

void addSetPoints(Texts& texts, const Part& part, const PartKind& kind, const Features& features) {
    for (const ParameterSpec& parameter : kind.parameters()) {
        if (std::ranges::find(features.setPoints, parameter.key) != features.setPoints.end()) {
            texts.push_back(namedValue(part, kind, parameter));
        }
    }
}

/// The values that a kind states first.
void addFirstValues(Texts& texts, const Part& part, const PartKind& kind) {
    constexpr std::size_t kMost = 2;
    const auto parameters = kind.parameters();
    for (const ParameterSpec& parameter : parameters.first(std::min(kMost, parameters.size()))) {
        texts.push_back(namedValue(part, kind, parameter));
    }
}

/// A relay's choices show in its coil and contacts; those of switches and supplies are about the drive.
bool choicesMatter(const Features& features) {
    const bool plainSwitch = !features.contacts.empty() && features.setPoints.empty();
    return features.coils.empty() && !plainSwitch && !features.source;
}

void addChoices(Texts& texts, const Part& part, const PartKind& kind) {
    for (const ChoiceSpec& choice : kind.choices()) {
        for (const ChoiceSpec::Option& option : choice.options) {
            if (option.id == kind.choice(part, choice.key) && !isAssumption(choice)) {
                texts.push_back(fmt::format("{}: {}", lowerFirst(choice.label), option.label));
            }
        }
    }
}

} // namespace

bool isAssumption(const ChoiceSpec& choice) {
    return choice.key == "band" || choice.key == "atStart";
}

std::string ratingsText(const Part& part) {
    const PartKind& kind = kindOf(part);
    const Features features = kind.features(part);
    Texts texts;
    addFuse(texts, features);
    addCoils(texts, features);
    addContacts(texts, features);
    addLoads(texts, features);
    addRectifier(texts, features);
    addSetPoints(texts, part, kind, features);
    if (texts.empty()) {
        addFirstValues(texts, part, kind);
    }
    if (choicesMatter(features)) {
        addChoices(texts, part, kind);
    }
    return fmt::format("{}", fmt::join(texts, "; "));
}

} // namespace pumpwright
