#pragma once

#include "app/desktop/panels/nameplate_fields.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;

namespace pumpwright {

/// A field for a text or a choice, with what is wrong with it below.
class TextField final : public QWidget {
    Q_OBJECT

public:
    explicit TextField(const NameplateField& field, QWidget* parent = nullptr);

    /// Takes up value and warning; does not disturb typing.
    void showField(const NameplateField& field);
    QString message() const;
    QLineEdit* editor() { return m_editor; }
    QComboBox* choices() { return m_choices; }

Q_SIGNALS:
    void edited(const QString& text);
    void finished();

private:
    void buildEditor(const NameplateField& field);
    void buildChoices(const NameplateField& field);
    void offer(const QString& text);
    void finishTyping();
    void showMessage(const QString& text);

    NameplateField m_field;
    QLineEdit* m_editor = nullptr;
    QComboBox* m_choices = nullptr;
    QLabel* m_message;
};

} // namespace pumpwright
