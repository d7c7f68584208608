#pragma once

#include "app/desktop/circuit/drawing.h"
#include "app/desktop/circuit/labels.h"
#include "app/desktop/circuit/overlay_item.h"
#include "app/desktop/circuit/shown_circuit.h"
#include "app/desktop/document/document.h"
#include "app/desktop/document/selection.h"

#include <QGraphicsScene>

#include <map>
#include <memory>
#include <optional>

namespace pumpwright {

class Analysis;
class HandOperation;

/// How near to a thing a click still means it, on the screen.
inline constexpr double kReach_px = 12;

/// Shows the document's circuit, or the preview of an edit, with selection, findings and live state.
class CircuitScene final : public QGraphicsScene {
    Q_OBJECT

public:
    CircuitScene(Document& document, Selection& selection, Analysis& analysis, QObject* parent = nullptr);
    ~CircuitScene() override;

    /// What is operated by hand shows instead of the drive, while it is on.
    void setHandOperation(HandOperation& operation);
    void setColours(const Palette& palette);
    const Palette& colours() const { return m_drawing.palette(); }

    /// What is shown: the document's circuit or a preview.
    const Circuit& circuit() const;
    const CircuitLayout& layout() const { return m_layout; }
    const LiveState& live() const { return m_live; }

    /// Shows the circuit as it would be after the edit, until endPreview() or the document changes.
    void preview(const Edit& edit);
    void endPreview();
    void setOverlay(const Overlay& overlay);
    void setHovered(const SelectedObjects& objects);

    /// The terminal or port nearest to a place, not farther than `reach`.
    struct Caught {
        End end;
        ConnectionPoint point;
    };
    std::optional<Caught> connectionAt(const QPointF& at, double reach) const;
    /// The part at a place, else the line not farther than `reach`; one object or none.
    SelectedObjects objectAt(const QPointF& at, double reach) const;
    /// The label at a place, where labels show at all, but not on a part.
    std::optional<StandingLabel> labelAt(const QPointF& at, double reach) const;
    /// The part, what a label names, or the line at a place.
    SelectedObjects objectOrNamedAt(const QPointF& at, double reach) const;
    SelectedObjects objectsIn(const QRectF& area) const;
    QRectF boundsOf(const SelectedObjects& objects) const;

Q_SIGNALS:
    void layoutChanged();

protected:
    void drawBackground(QPainter* painter, const QRectF& area) override;

private:
    void layOut();
    void syncAll();
    void dropVanishedSelection();
    void readLiveState();
    void readFindings();
    Document& m_document;
    Selection& m_selection;
    Analysis& m_analysis;
    HandOperation* m_operation = nullptr;
    CircuitDrawing m_drawing;
    CircuitLayout m_layout;
    std::optional<Circuit> m_preview;
    SelectedObjects m_hovered;
    std::shared_ptr<const DriveResult> m_drive; ///< that m_reader reads
    std::unique_ptr<LiveReader> m_reader;
    LiveState m_live;
    Marks m_marks;
    ShownCircuit m_shown;
    std::unique_ptr<OverlayItem> m_overlayItem;
};

/// What people call a terminal or port: "K1: 86, coil, + side".
QString connectionText(const Circuit& circuit, const CircuitScene::Caught& caught);

} // namespace pumpwright
