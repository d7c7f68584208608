#pragma once

#include "app/desktop/studies/handed_over.h"
#include "core/study/sweep.h"

#include <QWidget>

#include <array>
#include <memory>

class QComboBox;
class QGridLayout;
class QLineEdit;
class QSpinBox;

namespace pumpwright {

class Document;
class StudyPage;
class SweepPlot;
class ValueChoice;

/// One value of the circuit, or two, over a range: the result as a curve or map, and where it turns good.
class SweepPage final : public QWidget {
    Q_OBJECT

public:
    explicit SweepPage(Document& document, QWidget* parent = nullptr);

    struct AxisFields {
        ValueChoice* value;
        QLineEdit* from;
        QLineEdit* to;
    };
    AxisFields& axis(std::size_t index) { return m_axes[index]; }
    QComboBox& result() { return *m_result; }
    QLineEdit& goal() { return *m_goal; }
    QSpinBox& points() { return *m_points; }
    StudyPage& study() { return *m_study; }
    SweepPlot& plot() { return *m_plot; }

private:
    /// What the fields ask for.
    struct Asked {
        std::vector<SweepAxis> axes;
        SweepOptions options;
    };

    void build();
    AxisFields newAxis(const QString& name, const QString& none);
    void proposeRange(const AxisFields& fields);
    void proposeGoal();
    Result<Asked> asked() const;
    Result<SweepAxis> axisFrom(const AxisFields& fields, const Adjustable& what) const;
    void showPicture();

    Document& m_document;
    std::array<AxisFields, 2> m_axes;
    QComboBox* m_result;
    QLineEdit* m_goal;
    QSpinBox* m_points;
    SweepPlot* m_plot;
    std::shared_ptr<HandedOver<SweepStudy>> m_found; ///< of the run that was begun last
    const Measure* m_measure = nullptr;
    std::optional<double> m_foundGoal;
    StudyPage* m_study;
};

} // namespace pumpwright
