import { makeSay } from './make-say.ts';

/**
 * What the kernel says of an order in one ZIP that is not sound, and the lines of an order as plain text, in English.
 * A table of its own, so that it comes along only where orders are read or written.
 */
export const ORDER_EN = makeSay({
  orderFault: {
    altered:
      '“{{file}}” is not as it was when the order was written: its SHA-256 is another. Do not use it; ask for the order again.',
    approvalDiffers:
      'The order and its design do not say the same of who approved what. Do not cut; ask for the order again.',
    approvalOther:
      'The approval of {{name}} is for fingerprint {{approved}}, and this design has {{fingerprint}}: what was approved is something else. Do not cut; ask for a new approval.',
    archive: '“{{file}}” is an archive in the archive, which no order holds. Do not open it; ask for the order again.',
    bomb: '“{{file}}” unpacks to more than an order can hold, so it was not unpacked. Do not open it with anything else; ask for the order again.',
    caseTwice:
      '“{{file}}” and “{{other}}” differ only in capital letters: on many machines one would take the other’s place. Ask for the order again.',
    cutOther:
      '“{{file}}” says of itself that it cuts the design {{found}}; this order is of {{fingerprint}}. Do not cut by it; ask for the order again.',
    cutUnmarked:
      '“{{file}}” is to be cut by and does not say which design it cuts. Do not cut by it; ask for the order again.',
    damaged: '“{{file}}” is damaged: it cannot be unpacked as it was packed. Ask for the order again.',
    designOther:
      'The design has the fingerprint {{found}}, and the order was written for {{fingerprint}}: it is another design. Do not cut; ask for the order again.',
    designUnreadable: 'The design of this order cannot be read. {{reason}}',
    disagree:
      '“{{file}}” is called or described otherwise at its place in the archive than in the archive’s list, so two programs could find two different files. Do not use it; ask for the order again.',
    encrypted: '“{{file}}” is locked with a password. Ask for the order as it was written.',
    extra: '“{{file}}” is none of the files of this order: somebody put it in. Do not use it; ask for the order again.',
    large: 'This file is larger than {{most}} MB, more than any order. Choose the file that ends in -order.zip.',
    listBroken:
      'The list at the end of the archive cannot be read: part of it was lost or changed. Ask for the order again.',
    madeAbsent: '“{{file}}” belongs to this design and is not in the order. Do not cut; ask for the order again.',
    madeOther:
      '“{{file}}” is not what comes out when the design is made again: it was changed before the order was sealed, or this Bridgehead is of another version than the one that wrote it. Do not cut by it; ask for the order again.',
    madeUnknown:
      '“{{file}}” is to be cut by, and the design gives no such file. Do not cut by it; ask for the order again.',
    manifestNewer:
      'This order is of version {{version}}, and this Bridgehead reads up to version {{newest}}. Use a newer Bridgehead.',
    manifestUnreadable:
      'The list of the order’s files (manifest.json) is not as Bridgehead writes it. Ask for the order again.',
    method: '“{{file}}” is packed in a way that no order is. Ask for the order as it was written.',
    missing: '“{{file}}” belongs to this order and is missing. Ask for the order again.',
    noDesign: 'This order has no design (design.json). Ask for the order again.',
    notOrder: 'This is no order: the archive has no manifest.json. Choose the file that ends in -order.zip.',
    notZip: 'This is no order: the file is no ZIP archive. Choose the file that ends in -order.zip.',
    orderOther: '{{order}}. Do not cut; ask for an order as it was approved.',
    otherRules:
      'This order was made by the rules of another stock file than the one used here, so its files cannot be made again and compared. Give the shop’s own stock file, or ask the shop to check it.',
    paperOther:
      '“{{file}}” is the paper of another design, {{found}}; this order is of {{fingerprint}}. Do not work by it; ask for the order again.',
    path: 'A file of this archive is called “{{file}}”, a path out of the folder it is unpacked in. Do not unpack it with anything; ask for the order again.',
    repacked:
      'This archive was packed again by another program, so it is not the one that was written. Ask for the order as it was written.',
    repackedFile:
      '“{{file}}” is entered in the archive otherwise than Bridgehead does it. Ask for the order as it was written.',
    role: '“{{file}}” is listed as something that it is not. Do not cut by it; ask for the order again.',
    signatureGone:
      'This order says that it is signed, and its signature is missing. Do not use it; ask for the order again.',
    signatureWrong:
      'The signature of this order does not fit its files or its key: it was signed for something else. Do not use it; ask for the order again.',
    signs:
      'A file of this archive is called “{{file}}”, with signs that can pass for others or turn the reading direction. Do not use it; ask for the order again.',
    stray:
      'There are bytes in the archive that belong to none of its files: something was put before, between or behind them. Do not use it; ask for the order again.',
    strayIn: 'Behind the packed “{{file}}” more bytes are hidden. Do not use it; ask for the order again.',
    system:
      'A file of this archive is called “{{file}}”, a name that some systems keep for themselves or hide. Ask for the order again.',
    titleOther: 'The order is titled “{{title}}”, its design “{{found}}”. Do not use it; ask for the order again.',
    tooMany: 'This archive holds more files than any order, {{most}}. Ask for the order again.',
    truncated: 'The archive stops in the middle: part of it was lost on the way. Ask for the order again.',
    twice: '“{{file}}” is in the archive more than once. Do not use it; ask for the order again.',
    wide: 'The archive is in the form for very large ones, which no order is. Ask for the order as it was written.',
  },
  orderText: {
    approved: 'Approved by {{name}}, {{at}}',
    approvedPlain: 'Approved by {{name}}',
    approvedShort: 'COMPARE BY EYE: the approval of {{name}} carries only {{approved}}',
    approvedOther: 'NOT APPROVED: the approval of {{name}} is for {{approved}}',
    fingerprint: 'Fingerprint: {{fingerprint}}',
    letters: 'What it says:',
    material: 'Material: {{material}}, {{thickness}}, {{process}}',
    neededBy: 'Needed by: {{day}}',
    notApproved: 'Not approved yet',
    notes: 'Notes: {{notes}}',
    plate: '{{quantity}} × {{name}}, {{diameter}} across',
    plates: 'Plates:',
    price: 'Price: {{price}}',
    reference: 'Reference: {{reference}}',
    title: 'Stencil order: {{title}}',
    who: 'For: {{who}}',
  },
});
