#pragma once

#include "core/checks/command.h"
#include "core/checks/survey.h"

#include <set>

namespace pumpwright {

/// Contacts, by number of their branch, that lie between a load and what feeds it without a switch, on its
/// plus side and on its minus side: what switches it.
std::set<std::size_t> controlsOf(const Survey& survey, const LoadPath& path);

/// Found anew; the survey has those of the pumps.
Command commandOf(const Survey& survey, const LoadPath& load);

/// The same, and what commands those contacts in turn: the controls of the coils and inputs of their parts.
std::set<std::size_t> allControlsOf(const Survey& survey, const LoadPath& path);

/// The parts of those contacts.
std::set<PartId> controllingParts(const Survey& survey, const LoadPath& path);

/// Numbers of the load paths that have a part in commanding a load: coils, timers, inputs. Without itself.
std::set<std::size_t> commandingPathsOf(const Survey& survey, const LoadPath& path);

/// Numbers of the load paths of pumps: the motors of parts that pump.
std::vector<std::size_t> pumpPaths(const Survey& survey);

/// Whether something moves a contact among these that way: by hand, by the pedal, by vacuum.
bool anyMovedBy(const Survey& survey, const std::set<std::size_t>& contacts, Operator by);

} // namespace pumpwright
