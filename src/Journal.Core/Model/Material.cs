namespace Journal.Core.Model;

/// <summary>What a thing is made of: a family of the vocabulary and a free grade behind it.</summary>
public sealed record Material(Id<MaterialFamily> Family, string? Grade);

/// <summary>A family of materials.</summary>
public sealed record MaterialFamily(Id<MaterialFamily> Id, string Title);

/// <summary>What a part is made from: a form of the vocabulary and its free size.</summary>
public sealed record Stock(Id<StockForm> Form, string? Size);

/// <summary>A form in which material comes.</summary>
public sealed record StockForm(Id<StockForm> Id, string Title);
