#pragma once

#include "app/desktop/document/selection.h"

#include <QList>

class QAction;
class QObject;

namespace pumpwright {

class CircuitView;

/// One for each Arrangement, in their order: lines up the selection of the view.
QList<QAction*> newArrangeActions(CircuitView& view, QObject* parent);

/// Grey is what needs more parts than are selected.
void enableArrangeActions(const QList<QAction*>& actions, const SelectedObjects& objects);

} // namespace pumpwright
