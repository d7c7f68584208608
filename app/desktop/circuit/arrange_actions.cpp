#include "app/desktop/circuit/arrange_actions.h"

#include "app/desktop/circuit/arranging.h"
#include "app/desktop/circuit/circuit_view.h"

#include <QAction>
#include <QCoreApplication>

namespace pumpwright {
namespace {

struct ArrangeActions {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::ArrangeActions)
};

/// Menu text and status line.
struct Texts {
    QString name;
    QString tip;
};

Texts textsOf(Arrangement how) {
    switch (how) {
    case Arrangement::LeftEdges:
        return {ArrangeActions::tr("&Left edges"), ArrangeActions::tr("Move the parts to the leftmost edge")};
    case Arrangement::MiddlesAcross:
        return {ArrangeActions::tr("&One below the other"),
                ArrangeActions::tr("Bring the middles of the parts below each other")};
    case Arrangement::RightEdges:
        return {ArrangeActions::tr("&Right edges"),
                ArrangeActions::tr("Move the parts to the rightmost edge")};
    case Arrangement::TopEdges:
        return {ArrangeActions::tr("&Top edges"), ArrangeActions::tr("Move the parts to the topmost edge")};
    case Arrangement::MiddlesDown:
        return {ArrangeActions::tr("&Side by side"),
                ArrangeActions::tr("Bring the middles of the parts to one height")};
    case Arrangement::BottomEdges:
        return {ArrangeActions::tr("&Bottom edges"), ArrangeActions::tr("Move the parts to the lowest edge")};
    case Arrangement::GapsAcross:
        return {ArrangeActions::tr("Equal gaps &across"),
                ArrangeActions::tr("Leave the same gap from part to part, left to right")};
    case Arrangement::GapsDown:
        break;
    }
    return {ArrangeActions::tr("Equal gaps &down"),
            ArrangeActions::tr("Leave the same gap from part to part, top to bottom")};
}

} // namespace

QList<QAction*> newArrangeActions(CircuitView& view, QObject* parent) {
    QList<QAction*> actions;
    for (const Arrangement how : kArrangements) {
        const Texts texts = textsOf(how);
        auto* action = new QAction(texts.name, parent);
        action->setStatusTip(texts.tip);
        QObject::connect(action, &QAction::triggered, &view, [&view, how] { view.arrangeSelection(how); });
        actions << action;
    }
    return actions;
}

void enableArrangeActions(const QList<QAction*>& actions, const SelectedObjects& objects) {
    for (std::size_t i = 0; i < kArrangements.size(); ++i) {
        actions.at(static_cast<qsizetype>(i))->setEnabled(canArrange(objects, kArrangements.at(i)));
    }
}

} // namespace pumpwright
