#pragma once

#include "core/sheet/comparison.h"

#include <QDialog>

namespace pumpwright {

/// What two circuits say differently, and what that does to their findings.
class ComparisonWindow final : public QDialog {
    Q_OBJECT

public:
    /// Names of the two, for people.
    ComparisonWindow(const QString& before, const QString& after, const Comparison& comparison,
                     QWidget* parent);

private:
    void addTable(const QString& heading, const QString& whenEmpty, const SheetTable& table);
};

} // namespace pumpwright
