#pragma once

#include "app/desktop/panels/quantity_text.h"

#include <QDialog>

#include <functional>
#include <vector>

class QComboBox;
class QFormLayout;
class QLineEdit;
class QTabWidget;

namespace pumpwright {

class Preferences;
class QuantityField;

/// What the user prefers, beside the work: each change counts at once, and nothing needs to be confirmed.
class PreferencesWindow final : public QDialog {
    Q_OBJECT

public:
    explicit PreferencesWindow(Preferences& preferences, QWidget* parent = nullptr);

private:
    struct Choice {
        QString text;
        QString value;
    };

    QWidget* unitsPage();
    QWidget* newCircuitsPage();
    QWidget* windowPage();
    QComboBox* addChoice(QFormLayout& form, const QString& name, const std::vector<Choice>& choices,
                         const std::function<QString()>& read,
                         const std::function<void(const QString&)>& write);
    void addCurrency(QFormLayout& form);
    void addQuantity(QFormLayout& form, const QString& name, const QuantityRange& range,
                     const std::function<double()>& read, const std::function<void(double)>& write);
    void addWire(QFormLayout& form);
    void addLimits(QFormLayout& form);
    void showAll();

    Preferences& m_preferences;
    QTabWidget* m_pages;
    std::vector<std::function<void()>> m_show; ///< bring each field up to date
};

} // namespace pumpwright
