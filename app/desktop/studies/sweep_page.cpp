#include "app/desktop/studies/sweep_page.h"

#include "app/desktop/chart/sweep_plot.h"
#include "app/desktop/document/document.h"
#include "app/desktop/panels/quantity_text.h"
#include "app/desktop/studies/spoken_table.h"
#include "app/desktop/studies/study_page.h"
#include "app/desktop/studies/value_choice.h"
#include "core/sheet/sweep_tables.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>

#include <algorithm>

namespace pumpwright {
namespace {

constexpr int kUsualPoints = 15;
constexpr int kMostPointsOffered = 100;
constexpr int kLeastLetters = 14; ///< of a chosen text: the panel is narrow

QLineEdit* newField(const QString& name, QWidget* parent) {
    auto* field = new QLineEdit(parent);
    field->setAccessibleName(name);
    field->setMinimumWidth(10 * field->fontMetrics().averageCharWidth());
    return field;
}

QLabel* newLabel(const QString& text, QWidget* buddy) {
    auto* label = new QLabel(text, buddy->parentWidget());
    label->setBuddy(buddy);
    return label;
}

} // namespace

SweepPage::SweepPage(Document& document, QWidget* parent)
    : QWidget(parent),
      m_document(document), m_axes{newAxis(tr("Value"), {}), newAxis(tr("Second value"), tr("nothing else"))},
      m_result(new QComboBox(this)), m_goal(newField(tr("Good at"), this)), m_points(new QSpinBox(this)),
      m_plot(new SweepPlot(this)),
      m_study(new StudyPage(
          document, tr("Sweep"),
          tr("Drives the circuit with a value over a range, and looks for where the result turns good."),
          [this](const Circuit& circuit) -> StudyRun::Study {
              Result<Asked> now = asked();
              if (!now) {
                  m_study->showNote(shown(now.error().text));
                  return {};
              }
              m_found = std::make_shared<HandedOver<SweepStudy>>();
              m_measure = now->options.measure;
              m_foundGoal = now->options.goal;
              return [circuit, found = m_found, asked = *now](const StudyOptions& options,
                                                              const StudyRun::Show& show) {
                  SweepOptions sweepOptions = asked.options;
                  static_cast<StudyOptions&>(sweepOptions) = options;
                  const auto tablesOf = [&](const SweepStudy& study) {
                      found->put(study);
                      return sweepTables(study, *sweepOptions.measure, sweepOptions.goal, inUsersLanguage);
                  };
                  sweepOptions.partial = [&](const SweepStudy& soFar) {
                      show([&] { return tablesOf(soFar); });
                  };
                  return tablesOf(runSweep(circuit, asked.axes, sweepOptions));
              };
          },
          this)) {
    build();
    connect(m_study, &StudyPage::tablesChanged, this, &SweepPage::showPicture);
    for (const AxisFields& fields : m_axes) {
        connect(fields.value, &QComboBox::currentIndexChanged, this,
                [this, fields] { proposeRange(fields); });
        proposeRange(fields);
    }
    connect(m_result, &QComboBox::currentIndexChanged, this, &SweepPage::proposeGoal);
    proposeGoal();
}

SweepPage::AxisFields SweepPage::newAxis(const QString& name, const QString& none) {
    return {new ValueChoice(m_document, name, none, this), newField(tr("%1 from").arg(name), this),
            newField(tr("%1 to").arg(name), this)};
}

void SweepPage::build() {
    for (const Measure& measure : measures()) {
        m_result->addItem(translatedWords(measure.label), editable(measure.id));
    }
    m_result->setAccessibleName(tr("Result"));
    m_result->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_result->setMinimumContentsLength(kLeastLetters);
    m_points->setAccessibleName(tr("Points along each value"));
    m_points->setRange(2, kMostPointsOffered);
    m_points->setValue(kUsualPoints);
    m_points->setSuffix(tr(" points"));
    m_goal->setPlaceholderText(tr("any"));

    auto* fields = new QGridLayout;
    int row = 0;
    for (const AxisFields& axis : m_axes) {
        fields->addWidget(newLabel(row == 0 ? tr("Over") : tr("and over"), axis.value), row, 0);
        fields->addWidget(axis.value, row, 1);
        fields->addWidget(newLabel(tr("from"), axis.from), row, 2);
        fields->addWidget(axis.from, row, 3);
        fields->addWidget(newLabel(tr("to"), axis.to), row, 4);
        fields->addWidget(axis.to, row, 5);
        ++row;
    }
    fields->addWidget(newLabel(tr("Result"), m_result), row, 0);
    fields->addWidget(m_result, row, 1);
    fields->addWidget(newLabel(tr("good at"), m_goal), row, 2);
    fields->addWidget(m_goal, row, 3);
    fields->addWidget(m_points, row, 4, 1, 2);
    fields->setColumnStretch(1, 1);

    auto* left = new QVBoxLayout;
    left->setContentsMargins(8, 8, 0, 4);
    left->addLayout(fields);
    left->addWidget(m_plot, 1);
    auto* both = new QHBoxLayout(this);
    both->setContentsMargins(0, 0, 0, 0);
    both->addLayout(left, 3);
    both->addWidget(m_study, 2);
}

/// From half of what the circuit has to twice.
void SweepPage::proposeRange(const AxisFields& fields) {
    const auto what = fields.value->chosen();
    fields.from->setEnabled(what.has_value());
    fields.to->setEnabled(what.has_value());
    if (!what) {
        fields.from->clear();
        fields.to->clear();
        return;
    }
    const ParameterSpec& spec = *what->spec;
    const double now = valueOf(m_document.circuit(), *what);
    const double from = std::clamp(now / 2, spec.low, spec.high);
    const double to = std::clamp(now != 0 ? 2 * now : spec.high, spec.low, spec.high);
    fields.from->setText(quantityText(from, spec.kind, {}));
    fields.to->setText(quantityText(to, spec.kind, {}));
}

void SweepPage::proposeGoal() {
    const Measure& measure = measures()[static_cast<std::size_t>(m_result->currentIndex())];
    const auto goal = measure.goal(m_document.circuit());
    m_goal->setEnabled(measure.sort != Measure::Sort::YesNo && measure.better != Better::Neither);
    m_goal->setText(!goal                                  ? QString()
                    : measure.sort == Measure::Sort::YesNo ? tr("no")
                                                           : quantityText(*goal, measure.kind, {}));
}

Result<SweepAxis> SweepPage::axisFrom(const AxisFields& fields, const Adjustable& what) const {
    const Result<double> from = quantityWithin(fields.from->text(), rangeOf(*what.spec), {});
    const Result<double> to = quantityWithin(fields.to->text(), rangeOf(*what.spec), {});
    if (!from || !to) {
        return tl::unexpected(from ? to.error() : from.error());
    }
    if (*from == *to) {
        return tl::unexpected(
            Error{ErrorCode::OutOfRange, what.label + " begins where it ends: choose a range.", {}});
    }
    return SweepAxis{what, std::min(*from, *to), std::max(*from, *to), m_points->value()};
}

Result<SweepPage::Asked> SweepPage::asked() const {
    Asked now;
    for (const AxisFields& fields : m_axes) {
        const auto what = fields.value->chosen();
        if (!what && (&fields == m_axes.data() || fields.value->currentIndex() > 0)) {
            return tl::unexpected(Error{ErrorCode::DanglingReference, "Choose a value from the list.", {}});
        }
        if (what) {
            const Result<SweepAxis> axis = axisFrom(fields, *what);
            if (!axis) {
                return tl::unexpected(axis.error());
            }
            now.axes.push_back(*axis);
        }
    }
    if (now.axes.size() > 1 && now.axes[0].what.name == now.axes[1].what.name) {
        return tl::unexpected(
            Error{ErrorCode::DuplicateKey, "Both values are the same: choose another second value.", {}});
    }
    now.options.measure = &measures()[static_cast<std::size_t>(m_result->currentIndex())];
    if (!m_goal->isEnabled()) {
        now.options.goal = now.options.measure->goal(m_document.circuit());
    } else if (!m_goal->text().trimmed().isEmpty()) {
        const Result<double> goal = quantityFromText(m_goal->text(), now.options.measure->kind, {});
        if (!goal) {
            return tl::unexpected(goal.error());
        }
        now.options.goal = *goal;
    }
    return now;
}

void SweepPage::showPicture() {
    if (m_found && m_measure != nullptr) {
        m_plot->showSweep(m_found->value(), *m_measure, m_foundGoal);
    }
}

} // namespace pumpwright
