#pragma once

#include "core/sheet/bill.h"

#include <QWidget>

class QTabWidget;

namespace pumpwright {

class Document;
class StudyPage;
class TrialsPage;

/// Studies of many drives: trials side by side, breakdowns one by one, and the spread of tolerances.
class StudiesPanel final : public QWidget {
    Q_OBJECT

public:
    StudiesPanel(Document& document, const PriceList& prices, QWidget* parent = nullptr);

    TrialsPage& trials() { return *m_trials; }
    StudyPage& breakdowns() { return *m_breakdowns; }
    StudyPage& spread() { return *m_spread; }

private:
    StudyPage* newSpreadPage(Document& document);

    QTabWidget* m_pages;
    TrialsPage* m_trials;
    StudyPage* m_breakdowns;
    StudyPage* m_spread;
};

} // namespace pumpwright
