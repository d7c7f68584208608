#pragma once

#include <QObject>

namespace pumpwright {

class CircuitView;
class Document;

/// Keeps the whole circuit in view while panels and window take their sizes, until the user zooms.
class KeptFit final : public QObject {
    Q_OBJECT

public:
    KeptFit(CircuitView& view, Document& document, QObject* parent = nullptr);

    void fit();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    CircuitView& m_view;
    double m_fittedZoom = 0; ///< what the last fit came to
};

} // namespace pumpwright
