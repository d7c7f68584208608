#pragma once

#include "app/desktop/chart/chart_lanes.h"
#include "app/desktop/chart/chart_palette.h"
#include "app/desktop/panels/quantity_text.h"

#include <QWidget>

#include <optional>

class QCPAxis;
class QCPAxisRect;
class QCPItemStraightLine;
class QCPItemText;
class QCPMarginGroup;
class QCustomPlot;
class QMouseEvent;
class QWheelEvent;

namespace pumpwright {

/// A stretch of the drive.
struct TimeSpan {
    double from_s = 0;
    double to_s = 1;
};

/// Lanes stacked over one time axis, with a cursor line through all of them. The wheel zooms at the pointer,
/// dragging moves the view, dragging the cursor line or clicking moves the cursor, a double click shows the
/// whole drive.
class LanePlot final : public QWidget {
    Q_OBJECT

public:
    explicit LanePlot(QWidget* parent = nullptr);
    ~LanePlot() override;

    /// Draws these lanes; their channels must outlive the call only.
    void showLanes(const std::vector<ChartLane>& lanes, double duration_s, const ShownUnits& units);
    void showCursor(double time_s);
    /// A second line, dashed, from which differences are taken; none for nullopt.
    void showMark(std::optional<double> time_s);

    TimeSpan visibleSpan() const { return m_span; }
    void showSpan(TimeSpan span);
    void showWholeDrive();
    /// Above one shows less time. The cursor stays where it is on the screen, where it is in view.
    void zoom(double factor);

    QCustomPlot& plot() { return *m_plot; }

Q_SIGNALS:
    void cursorRequested(double time_s);
    void spanChanged();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void clear();
    QFont smallFont() const;
    void fillLane(QCPAxisRect& rect, const ChartLane& lane, const ChartPalette& palette);
    void fillQuantities(QCPAxisRect& rect, const ChartLane& lane, const ChartPalette& palette);
    void fillStates(QCPAxisRect& rect, const ChartLane& lane, const ChartPalette& palette);
    void addLevels(QCPAxisRect& rect, const ChartLane& lane, const ChartPalette& palette);
    void addTitle(QCPAxisRect& rect, const ChartLane& lane, const ChartPalette& palette);
    QCPItemStraightLine* newTimeLine(QCPAxisRect& rect, const QPen& pen);
    void placeTimeLines();
    void giveSpanToLanes();
    void thinOut();
    void setLeastHeight();

    void press(QMouseEvent* event);
    void move(QMouseEvent* event);
    void release(QMouseEvent* event);
    void turnWheel(QWheelEvent* event);
    void zoomAt(double time_s, double factor);
    bool hasLanes() const { return !m_cursorLines.empty(); }
    QCPAxis* timeAxis() const;
    double timeAt(double x) const;
    double xOf(double time_s) const;
    double secondsPerPixel() const;

    QCustomPlot* m_plot;
    QCPMarginGroup* m_margins = nullptr;
    std::vector<QCPAxisRect*> m_rects;               ///< owned by the plot
    std::vector<QCPItemStraightLine*> m_cursorLines; ///< one for each lane, owned by the plot
    std::vector<QCPItemStraightLine*> m_markLines;   ///< likewise
    struct LevelLabel {
        QCPAxisRect* rect;
        QCPItemText* label;
    };
    std::vector<LevelLabel> m_levelLabels; ///< owned by the plot
    ShownUnits m_units;
    double m_duration_s = 1;
    double m_cursor_s = 0;
    std::optional<double> m_mark_s;
    TimeSpan m_span;

    enum class Drag { None, Cursor, Undecided, View };
    Drag m_drag = Drag::None;
    double m_pressX = 0;
    TimeSpan m_pressSpan;
};

} // namespace pumpwright
