#pragma once

#include "app/desktop/circuit/drawing.h"
#include "app/desktop/circuit/line_item.h"
#include "app/desktop/circuit/overlay_item.h"
#include "app/desktop/circuit/part_item.h"
#include "app/desktop/document/document.h"
#include "app/desktop/document/selection.h"

#include <QGraphicsScene>

#include <map>
#include <memory>
#include <optional>

namespace pumpwright {

class Analysis;
class HandOperation;

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
    /// Until the cursor moves or the circuit changes.
    void showLive(LiveState live);

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
    SelectedObjects objectsIn(const QRectF& area) const;
    QRectF boundsOf(const SelectedObjects& objects) const;

Q_SIGNALS:
    void layoutChanged();

private:
    void layOut();
    void syncAll();
    void dropVanishedSelection();
    void readLiveState();
    void readFindings();
    void syncParts();
    void syncLines();
    Emphasis emphasisOf(bool selected, bool hovered) const;
    template <class Id, class Line, class Mark>
    void syncLinesOf(const std::map<Id, Line>& lines, const std::map<Id, LinePicture>& pictures,
                     std::map<Id, std::unique_ptr<LineItem>>& items, const std::set<Id>& selected,
                     const std::set<Id>& hovered, const Mark& lookOf);

    Document& m_document;
    Selection& m_selection;
    Analysis& m_analysis;
    HandOperation* m_operation = nullptr;
    CircuitDrawing m_drawing;
    CircuitLayout m_layout;
    std::optional<Circuit> m_preview;
    SelectedObjects m_hovered;
    LiveState m_live;
    std::map<PartId, SignalWord> m_partMarks;
    std::map<WireId, SignalWord> m_wireMarks;
    std::map<HoseId, SignalWord> m_hoseMarks;
    std::map<PartId, std::unique_ptr<PartItem>> m_partItems;
    std::map<WireId, std::unique_ptr<LineItem>> m_wireItems;
    std::map<HoseId, std::unique_ptr<LineItem>> m_hoseItems;
    std::unique_ptr<OverlayItem> m_overlayItem;
};

/// What people call a terminal or port: "K1: 86, coil, + side".
QString connectionText(const Circuit& circuit, const CircuitScene::Caught& caught);

} // namespace pumpwright
