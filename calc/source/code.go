package source

// The works on codes for cameras.
var ISO18004 = &Work{ID: "iso-18004", Title: "ISO/IEC 18004, Automatic identification and data capture techniques — QR Code bar code symbology specification"}
