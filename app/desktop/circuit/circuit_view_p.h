#pragma once

#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/circuit/empty_state.h"
#include "app/desktop/circuit/tool.h"

#include <QAccessible>
#include <QElapsedTimer>

#include <optional>

namespace pumpwright {

/// The view's inside: the tools' host, and panning.
class CircuitView::Private final : public QObject, public ToolHost {
public:
    Private(CircuitView& owner, Document& circuitDocument, Selection& sharedSelection, Analysis& analysis);
    ~Private() override;

    Document& document() override { return m_document; }
    Selection& selection() override { return m_selection; }
    CircuitScene& scene() override { return m_scene; }
    void setHint(const QString& text) override;
    void switchTo(std::unique_ptr<Tool> next) override;
    void place(Part prototype);
    Wire newWire() const override;
    Hose newHose() const override;
    void setCursorShape(Qt::CursorShape shape) override;

    Tool& tool() { return *m_tool; }
    /// Forgets tools that have handed over. To be called when no tool is on the call stack.
    void forgetRetired() { m_retired.clear(); }

    CanvasPointer pointerAt(const QPointF& viewPosition, Qt::KeyboardModifiers modifiers, bool down) const;
    void zoomBy(double factor, const QPointF& viewPosition);
    void panBy(const QPointF& pixels);
    /// Room to scroll: a view's size round the circuit, and at least what is seen now.
    void updateSceneRect();
    void updateEmptyState();
    void centreOnSelection();
    void useWindowColours();
    /// Takes letters from shortcuts where the tool reads them as text.
    bool eventFilter(QObject* watched, QEvent* event) override;
    /// Where there is room for a part, as far as possible in what is seen.
    GridPoint freePlaceFor(const Part& part) const;
    /// Puts the ghost where there is room, for those who do not point.
    void steerToFreePlace();
    QPointF steeringStart() const;
    /// Selects the part that lies next in a direction.
    void selectNeighbour(int dx, int dy);
    /// Moves the pointer of a running gesture by keys, or makes its click.
    bool steerTool(const QKeyEvent& event);
    bool handleKey(const QKeyEvent& event);
    bool handleArrow(const QKeyEvent& event);
    void drawGrid(QPainter& painter, const QRectF& area) const;
    void addArranging(QMenu& menu);
    void addLabelling(QMenu& menu);
    void popUpMenu(const QPoint& viewPosition, const QPoint& globalPosition);
    QString nudgeKey();
    GridPoint pasteOffset(const Circuit& fragment) const;
    double priceHere(double price) const;

    CircuitView& m_view;
    Document& m_document;
    Selection& m_selection;
    CircuitScene m_scene;
    Catalogue m_catalogue;
    HandOperation* m_operation = nullptr;
    Wire m_newWire;
    bool m_wheelScrolls = false;
    std::unique_ptr<Tool> m_tool;
    std::vector<std::unique_ptr<Tool>> m_retired;
    EmptyState* m_emptyState = nullptr;
    QRegion m_exposed;                ///< of the viewport, while it is painted
    std::optional<QPointF> m_panFrom; ///< pointer in the view while it pans
    Part m_toPlace;
    std::optional<QPointF> m_steered; ///< pointer of a gesture that is steered by keys, in the scene
    QPointF m_lastPointer;            ///< in the scene
    bool m_spaceDown = false;
    bool m_fitPending = true;
    bool m_stayFitted = false; ///< until the user zooms or pans, a resize fits again
    QElapsedTimer m_sinceNudge;
    SelectedObjects m_nudged;
    int m_nudgeBurst = 0;
    QAccessible::Id m_accessible = 0;
    int m_pastes = 0; ///< in a row without pointer, so that copies do not cover each other
};

} // namespace pumpwright
