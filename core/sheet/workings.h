#pragma once

#include "core/checks/survey.h"

#include <optional>
#include <string>
#include <vector>

namespace pumpwright {

/// A lamp or buzzer and the vacuum switches that decide about it.
struct WarningDevice {
    PartId part;
    std::vector<PartId> sensors;
};

/// Who decides about whom, found by following the current.
struct Workings {
    std::vector<PartId> pumps;    ///< parts with a motor
    std::vector<PartId> deciders; ///< whose contacts decide about the first pump, nearest to it first
    std::vector<PartId> sensors;  ///< those of them that sense vacuum
    std::vector<PartId> timers;   ///< those of them that are set to a time
    std::vector<PartId> handles;  ///< those of them that a hand or foot moves
    std::vector<WarningDevice> warnings;
    std::vector<PartId> boosters;
    std::vector<PartId> checkValves;
    std::vector<PartId> reservoirs;
};

Workings workingsOf(const Survey& survey);

/// The first way by which a part's load is fed, or null where nothing feeds it.
const LoadPath* feedOf(const Survey& survey, const PartId& part);

/// Fuses, contacts and diodes on the way from the source, in order of the current.
std::vector<PartId> partsOnFeed(const Survey& survey, const LoadPath& path);

/// The ground point where the current leaves the wires, if it goes over the body.
std::optional<PartId> groundOf(const Survey& survey, const LoadPath& path);

/// Whether a hand moves its contact: the drive plan, not the circuit, says when.
bool isHandOperated(const Part& part);

/// [s] that a timer is set to.
std::optional<double> setTime_s(const Part& part);

} // namespace pumpwright
