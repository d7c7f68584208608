#pragma once

#include "app/desktop/panels/quantity_text.h"

#include <QWidget>

#include <optional>

class QLabel;
class QLineEdit;
class QTimer;

namespace pumpwright {

/// A field for one quantity with its unit. What can be read and is in range is reported while typing; what is
/// refused is explained below the field, and on leaving the field the value from before comes back, as it
/// does on Esc. Where the selected objects differ nothing is reported before the field is left.
class QuantityField final : public QWidget {
    Q_OBJECT

public:
    QuantityField(const QString& name, const QuantityRange& range, const ShownUnits& units,
                  QWidget* parent = nullptr);

    /// Shows the value in force; none where the selected objects differ. Does not disturb typing.
    void showValue(std::optional<double> si);
    void setUnits(const ShownUnits& units);

    QLineEdit& editor() { return *m_editor; }
    QString message() const;

Q_SIGNALS:
    void edited(double si);
    void finished(); ///< the field was left or Return pressed

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void readText();
    void finish();
    void takeBack();
    void report(double si);
    void showMessage(const QString& text);
    void rewriteText();
    void showSecondUnit();

    QuantityRange m_range;
    ShownUnits m_units;
    std::optional<double> m_value;
    std::optional<double> m_before; ///< the value when typing began
    std::optional<double> m_held;   ///< read but not reported yet
    bool m_typing = false;
    QString m_refusal; ///< of the text as it stands, empty when it was taken
    QLineEdit* m_editor;
    QLabel* m_secondUnit;
    QLabel* m_message;
    QTimer* m_patience; ///< half-typed values are not scolded
};

} // namespace pumpwright
