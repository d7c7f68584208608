#include "app/desktop/edit_actions.h"

#include "app/desktop/circuit/arrange_actions.h"
#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/circuit/labels.h"
#include "app/desktop/document/document.h"
#include "app/desktop/document/selection.h"
#include "app/desktop/icons.h"

#include <QAction>
#include <QActionGroup>
#include <QMenu>
#include <QToolBar>

namespace pumpwright {

EditActions::EditActions(Document& document, Selection& selection, CircuitView& view, QObject* parent)
    : QObject(parent), m_document(document), m_selection(selection), m_view(view) {
    makeHistory(document);
    makeClipboard();
    makeShaping();
    makeLabelling();
    makeConnecting();
    makeZooming();
    connect(&selection, &Selection::changed, this, &EditActions::updateEnabled);
    connect(&document, &Document::changed, this, &EditActions::updateEnabled);
    updateEnabled();
}

QAction* EditActions::newAction(const QString& text, const QString& icon, const QKeySequence& keys,
                                const QString& tip) {
    auto* action = new QAction(text, this);
    if (!icon.isEmpty()) {
        action->setIcon(ownIcon(icon));
    }
    action->setShortcut(keys);
    action->setToolTip(
        keys.isEmpty() ? tip : QStringLiteral("%1 (%2)").arg(tip, keys.toString(QKeySequence::NativeText)));
    action->setStatusTip(tip);
    return action;
}

void EditActions::makeHistory(Document& document) {
    m_undo = document.undoStack().createUndoAction(this, tr("Undo"));
    m_redo = document.undoStack().createRedoAction(this, tr("Redo"));
    m_undo->setIcon(ownIcon(QStringLiteral("undo")));
    m_redo->setIcon(ownIcon(QStringLiteral("redo")));
    m_undo->setShortcut(QKeySequence::Undo);
    m_redo->setShortcuts(
        {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    // Under the icon the step's name would make the tool bar jump.
    m_undo->setIconText(tr("Undo"));
    m_redo->setIconText(tr("Redo"));
}

void EditActions::makeClipboard() {
    m_cut = newAction(tr("Cu&t"), QStringLiteral("cut"), QKeySequence::Cut, tr("Cut the selection"));
    m_copy = newAction(tr("&Copy"), QStringLiteral("copy"), QKeySequence::Copy, tr("Copy the selection"));
    m_paste =
        newAction(tr("&Paste"), QStringLiteral("paste"), QKeySequence::Paste, tr("Paste at the pointer"));
    m_duplicate =
        newAction(tr("D&uplicate"), {}, QKeySequence(Qt::CTRL | Qt::Key_D), tr("Duplicate the selection"));
    m_selectAll = newAction(tr("Select &all"), {}, QKeySequence::SelectAll, tr("Select everything"));
    connect(m_cut, &QAction::triggered, &m_view, &CircuitView::cutSelection);
    connect(m_copy, &QAction::triggered, &m_view, &CircuitView::copySelection);
    connect(m_paste, &QAction::triggered, &m_view, &CircuitView::paste);
    connect(m_duplicate, &QAction::triggered, &m_view, &CircuitView::duplicateSelection);
    connect(m_selectAll, &QAction::triggered, &m_view, &CircuitView::selectAll);
}

void EditActions::makeShaping() {
    m_rotate = newAction(tr("&Rotate"), QStringLiteral("rotate"), QKeySequence(Qt::Key_R),
                         tr("Turn the selection by a quarter, clockwise"));
    m_mirror = newAction(tr("&Mirror"), QStringLiteral("mirror"), QKeySequence(Qt::Key_M),
                         tr("Mirror the selection left to right"));
    m_delete = newAction(tr("&Delete"), QStringLiteral("delete"), QKeySequence(Qt::Key_Delete),
                         tr("Delete the selection"));
    m_arrange = newArrangeActions(m_view, this);
    connect(m_rotate, &QAction::triggered, &m_view, &CircuitView::rotateSelection);
    connect(m_mirror, &QAction::triggered, &m_view, &CircuitView::mirrorSelection);
    connect(m_delete, &QAction::triggered, &m_view, &CircuitView::deleteSelection);
}

void EditActions::makeLabelling() {
    m_moveLabel = newAction(tr("Move la&bel"), {}, QKeySequence(Qt::Key_L),
                            tr("Move the texts beside the selected part or wire"));
    m_placeLabels = newAction(tr("Place label aut&omatically"), {}, {},
                              tr("Leave it to the program where the texts stand"));
    connect(m_moveLabel, &QAction::triggered, &m_view, &CircuitView::moveLabel);
    connect(m_placeLabels, &QAction::triggered, &m_view, &CircuitView::placeLabels);
}

void EditActions::makeConnecting() {
    m_select = newAction(tr("&Select"), QStringLiteral("select"), {}, tr("Select and move (Esc)"));
    m_wire = newAction(tr("&Wire"), QStringLiteral("wire"), QKeySequence(Qt::Key_W),
                       tr("Draw a wire from terminal to terminal"));
    m_hose = newAction(tr("&Hose"), QStringLiteral("hose"), QKeySequence(Qt::Key_H),
                       tr("Draw a hose from port to port"));
    auto* activities = new QActionGroup(this);
    for (QAction* action : {m_select, m_wire, m_hose}) {
        action->setCheckable(true);
        activities->addAction(action);
    }
    activities->setExclusionPolicy(QActionGroup::ExclusionPolicy::ExclusiveOptional);
    m_select->setChecked(true);
    connect(m_select, &QAction::triggered, &m_view, &CircuitView::cancel);
    connect(m_wire, &QAction::triggered, &m_view, &CircuitView::startWire);
    connect(m_hose, &QAction::triggered, &m_view, &CircuitView::startHose);
    connect(&m_view, &CircuitView::activityChanged, this, [this](CanvasActivity activity) {
        m_select->setChecked(activity == CanvasActivity::Select);
        m_wire->setChecked(activity == CanvasActivity::Wire);
        m_hose->setChecked(activity == CanvasActivity::Hose);
    });
}

void EditActions::makeZooming() {
    m_zoomIn = newAction(tr("Zoom &in"), QStringLiteral("zoom-in"), QKeySequence(Qt::CTRL | Qt::Key_Plus),
                         tr("Show the circuit larger"));
    m_zoomOut = newAction(tr("Zoom &out"), QStringLiteral("zoom-out"), QKeySequence(Qt::CTRL | Qt::Key_Minus),
                          tr("Show the circuit smaller"));
    m_actualSize = newAction(tr("Actual &size"), {}, QKeySequence(Qt::CTRL | Qt::Key_0),
                             tr("Show the circuit at 100 %"));
    m_fit =
        newAction(tr("&Fit"), QStringLiteral("fit"), QKeySequence(Qt::Key_F), tr("Show the whole circuit"));
    connect(m_zoomIn, &QAction::triggered, &m_view, &CircuitView::zoomIn);
    connect(m_zoomOut, &QAction::triggered, &m_view, &CircuitView::zoomOut);
    connect(m_actualSize, &QAction::triggered, &m_view, &CircuitView::zoomToActualSize);
    connect(m_fit, &QAction::triggered, &m_view, &CircuitView::fit);
}

void EditActions::updateEnabled() {
    const bool any = !m_selection.objects().empty();
    const bool parts = !m_selection.objects().parts.empty();
    for (QAction* action : {m_cut, m_copy, m_duplicate, m_rotate, m_mirror}) {
        action->setEnabled(parts);
    }
    m_delete->setEnabled(any);
    m_moveLabel->setEnabled(any);
    m_placeLabels->setEnabled(hasMovedLabel(m_document.circuit(), m_selection.objects()));
    enableArrangeActions(m_arrange, m_selection.objects());
}

void EditActions::fillEditMenu(QMenu& menu) {
    menu.addActions({m_undo, m_redo});
    menu.addSeparator();
    menu.addActions({m_cut, m_copy, m_paste, m_duplicate, m_delete});
    menu.addSeparator();
    menu.addActions({m_rotate, m_mirror});
    menu.addMenu(tr("Arra&nge"))->addActions(m_arrange);
    menu.addActions({m_moveLabel, m_placeLabels});
    menu.addSeparator();
    menu.addAction(m_selectAll);
}

void EditActions::fillPlaceMenu(QMenu& menu) {
    menu.addActions({m_select, m_wire, m_hose});
}

void EditActions::fillZoomMenu(QMenu& menu) {
    menu.addActions({m_zoomIn, m_zoomOut, m_actualSize, m_fit});
}

void EditActions::fillToolBar(QToolBar& bar) {
    bar.addActions({m_undo, m_redo});
    bar.addSeparator();
    bar.addActions({m_select, m_wire, m_hose});
    bar.addSeparator();
    bar.addActions({m_rotate, m_mirror, m_delete});
    bar.addSeparator();
    bar.addAction(m_fit);
}

} // namespace pumpwright
