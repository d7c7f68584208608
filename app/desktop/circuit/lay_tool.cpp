#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/tool.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// Whether the stretch from `from` to `to` passes near `at`; lines run along the grid.
double distanceFrom(const QPointF& at, GridPoint from, GridPoint to) {
    const QRectF box = QRectF(scenePoint(from), scenePoint(to)).normalized();
    const double x = std::clamp(at.x(), box.left(), box.right()) - at.x();
    const double y = std::clamp(at.y(), box.top(), box.bottom()) - at.y();
    return std::hypot(x, y);
}

/// Drags one straight stretch of a wire or hose sideways and so fixes its corners.
class LayTool final : public Tool {
    Q_DECLARE_TR_FUNCTIONS(pumpwright::LayTool)

public:
    LayTool(ToolHost& toolHost, const SelectedObjects& line, const QPointF& pressedAt)
        : Tool(toolHost), m_line(line), m_pressedAt(pressedAt) {
        const CircuitLayout& layout = host().scene().layout();
        m_corners = line.wires.empty() ? layout.hoses.at(*line.hoses.begin()).corners
                                       : layout.wires.at(*line.wires.begin()).corners;
        findStretch();
    }

    void activate() override {
        host().setCursorShape(m_isAcross ? Qt::SizeVerCursor : Qt::SizeHorCursor);
        host().setHint(tr("Release to lay it here. It keeps these corners until it is routed again."));
    }

    void press(const CanvasPointer&) override {}

    void move(const CanvasPointer& pointer) override {
        const GridPoint by = nearestGridPoint(pointer.at - m_pressedAt);
        const int sideways = m_isAcross ? by.y : by.x;
        if (sideways != m_sideways) {
            m_sideways = sideways;
            host().scene().preview(edit());
        }
    }

    void release(const CanvasPointer&) override {
        host().scene().endPreview();
        if (m_sideways != 0) {
            host().document().apply(edit());
        }
        host().switchTo(nullptr);
    }

private:
    void findStretch() {
        for (std::size_t i = 0; i + 1 < m_corners.size(); ++i) {
            if (distanceFrom(m_pressedAt, m_corners[i], m_corners[i + 1]) <
                distanceFrom(m_pressedAt, m_corners[m_stretch], m_corners[m_stretch + 1])) {
                m_stretch = i;
            }
        }
        m_isAcross = m_corners[m_stretch].y == m_corners[m_stretch + 1].y;
    }

    /// The corners with the stretch moved; the line's ends stay on their terminals.
    std::vector<GridPoint> bends() const {
        const GridPoint by = m_isAcross ? GridPoint{0, m_sideways} : GridPoint{m_sideways, 0};
        std::vector<GridPoint> bends;
        for (std::size_t i = 0; i < m_corners.size(); ++i) {
            if (i == m_stretch || i == m_stretch + 1) {
                bends.push_back(m_corners[i] + by);
            } else if (i > 0 && i + 1 < m_corners.size()) {
                bends.push_back(m_corners[i]);
            }
        }
        return bends;
    }

    Edit edit() {
        const Circuit& circuit = host().document().circuit();
        return m_line.wires.empty() ? shaping(circuit, *m_line.hoses.begin(), bends())
                                    : shaping(circuit, *m_line.wires.begin(), bends());
    }

    SelectedObjects m_line;
    QPointF m_pressedAt;
    std::vector<GridPoint> m_corners;
    std::size_t m_stretch = 0;
    bool m_isAcross = true;
    int m_sideways = 0;
};

} // namespace

std::unique_ptr<Tool> layTool(ToolHost& host, const SelectedObjects& line, const QPointF& pressedAt) {
    return std::make_unique<LayTool>(host, line, pressedAt);
}

} // namespace pumpwright
