#pragma once

#include "core/sheet/bill.h"
#include "core/study/bench_log.h"
#include "core/study/trials.h"

#include <QWidget>

class QCheckBox;
class QTabWidget;

namespace pumpwright {

class Dialogs;
class Document;
class FitPage;
class StudyPage;
class SweepPage;
class TrialsPage;

/// Studies of many drives: trials side by side, a value over a range, breakdowns one by one, the spread of
/// tolerances, and the fit to a bench log.
class StudiesPanel final : public QWidget {
    Q_OBJECT

public:
    /// `dialogs` asks for the bench log.
    StudiesPanel(Document& document, const PriceList& prices, Dialogs& dialogs, QWidget* parent = nullptr);

    TrialsPage& trials() { return *m_trials; }
    SweepPage& sweep() { return *m_sweep; }
    StudyPage& breakdowns() { return *m_breakdowns; }
    StudyPage& spread() { return *m_spread; }
    FitPage& fit() { return *m_fit; }
    QCheckBox& pairs() { return *m_pairs; }

private:
    StudyPage* newBreakdownsPage(Document& document);
    StudyPage* newSpreadPage(Document& document);

    QTabWidget* m_pages;
    QCheckBox* m_pairs;
    TrialsPage* m_trials;
    SweepPage* m_sweep;
    StudyPage* m_breakdowns;
    StudyPage* m_spread;
    FitPage* m_fit;
};

} // namespace pumpwright
