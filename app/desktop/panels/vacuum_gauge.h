#pragma once

#include "app/desktop/panels/quantity_text.h"

#include <QWidget>

#include <optional>
#include <vector>

namespace pumpwright {

/// A dial for vacuum with a scale in kPa and one in inHg, and marks where a vacuum switch acts.
class VacuumGauge final : public QWidget {
    Q_OBJECT

public:
    explicit VacuumGauge(QWidget* parent = nullptr);

    /// Gauge vacuum; none where there is nothing to show.
    void showVacuum(std::optional<double> vacuum_Pa);
    void setMarks(const std::vector<double>& marks_Pa);
    /// Which unit is read out first.
    void setUnits(const ShownUnits& units);

    /// "62.0 kPa (18.3 inHg)", as it is read out; a dash for nothing.
    QString readout() const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString readIn(std::string_view unit) const;
    void drawScales(QPainter& painter, double radius) const;
    void drawMarks(QPainter& painter, double radius) const;
    void drawNeedle(QPainter& painter, double radius) const;
    void drawReadout(QPainter& painter, double radius) const;

    std::optional<double> m_vacuum_Pa;
    std::vector<double> m_marks_Pa;
    ShownUnits m_units;
};

} // namespace pumpwright
