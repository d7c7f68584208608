#pragma once

#include "core/study/adjustable.h"

#include <QComboBox>

namespace pumpwright {

class Document;

/// Chooses one of the values of the circuit that studies may set. Follows the circuit; what is chosen stays
/// chosen as long as it is there.
class ValueChoice final : public QComboBox {
    Q_OBJECT

public:
    /// `none` is the text of the first entry that chooses nothing; empty: there is no such entry.
    ValueChoice(Document& document, const QString& name, const QString& none, QWidget* parent = nullptr);

    std::optional<Adjustable> chosen() const;
    void choose(const std::string& valueName);

private:
    void fill();

    Document& m_document;
    QString m_none;
};

} // namespace pumpwright
