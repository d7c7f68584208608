#pragma once

#include "core/circuit/circuit.h"
#include "core/files/catalogue.h"

#include <QGraphicsView>

#include <memory>

namespace pumpwright {

class Analysis;
class CircuitScene;
class Document;
class EmptyState;
class HandOperation;
enum class Arrangement;
class Selection;
class Tool;

/// What the next click on the canvas is for.
enum class CanvasActivity { Select, Place, Wire, Hose, Operate };

/// Text of a catalogue entry's id, dragged from the Parts drawer.
inline constexpr char kCatalogueMimeType[] = "application/x-pumpwright-catalogue";

/// The canvas: shows the circuit, zooms and pans, and turns gestures and commands into edits of the document.
class CircuitView final : public QGraphicsView {
    Q_OBJECT

public:
    CircuitView(Document& document, Selection& selection, Analysis& analysis, QWidget* parent = nullptr);
    ~CircuitView() override;

    /// Where dropped ids are looked up, and the prices of new wires and hoses.
    void setCatalogue(const Catalogue& catalogue);

    /// What a new wire is like, but for its price.
    void setNewWire(const Wire& wire);
    /// A notched wheel scrolls, and zooms only with Ctrl.
    void setWheelScrolls(bool scrolls);
    /// What operateByHand() runs; must outlive the view's gestures.
    void setHandOperation(HandOperation& operation);

    CanvasActivity activity() const;
    double zoom() const; ///< 1 shows a grid step of 20 pixels

public Q_SLOTS:
    /// A ghost of the prototype follows the pointer; each click places one, Esc ends. References are given
    /// here.
    void place(const pumpwright::Part& prototype);
    /// One of the prototype at once, where there is room.
    void placeWhereFree(const pumpwright::Part& prototype);
    void startWire();
    void startHose();
    /// The circuit runs in real time and clicks move its switches, until Esc.
    void operateByHand();
    /// Ends what is half done and goes back to selecting.
    void cancel();

    void zoomIn();
    void zoomOut();
    void zoomToActualSize();
    void fit(); ///< the whole circuit

    void rotateSelection(); ///< a quarter turn clockwise
    void mirrorSelection();
    void arrangeSelection(pumpwright::Arrangement how);
    void moveLabel();   ///< of the one part or wire that is selected
    void placeLabels(); ///< of the selection, where the program would
    void deleteSelection();
    void cutSelection();
    void copySelection();
    void paste(); ///< at the pointer where it is over the canvas, else beside the original
    void duplicateSelection();
    void selectAll();
    void nudgeSelection(int dx, int dy); ///< in grid steps

Q_SIGNALS:
    /// One line that says what the next click or key does; for the status line.
    void hint(const QString& text);
    void activityChanged(pumpwright::CanvasActivity activity);
    void zoomChanged(double zoom);
    /// A part or wire was double-clicked, or Enter was pressed: show its Nameplate.
    void nameplateRequested();
    // From the empty canvas.
    void sampleRequested();
    void fileRequested();

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;
    void drawBackground(QPainter* painter, const QRectF& rect) override;
    void drawForeground(QPainter* painter, const QRectF& rect) override;

private:
    class Private;
    std::unique_ptr<Private> d;
};

} // namespace pumpwright
